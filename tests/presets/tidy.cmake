# The compile commands that clang-tidy reads; nothing is built here, and the tests are left out:
#   cmake -C tests/presets/tidy.cmake -S . -B build/tidy
set(CMAKE_BUILD_TYPE Debug CACHE STRING "" FORCE)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "" FORCE)
set(LIBSPLICE_TESTS OFF CACHE BOOL "" FORCE)
set(LIBSPLICE_WERROR OFF CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD_BATCH_SIZE 32 CACHE STRING "" FORCE)
