# The compile commands of each source alone, without its neighbours; nothing is built here:
#   cmake -C tests/presets/alone.cmake -S . -B build/alone -G Ninja
#   python3 tests/house/alone.py build/alone
set(CMAKE_BUILD_TYPE Debug CACHE STRING "" FORCE)
set(CMAKE_CXX_FLAGS_DEBUG "-O0" CACHE STRING "" FORCE)
set(CMAKE_C_FLAGS_DEBUG "-O0" CACHE STRING "" FORCE)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON CACHE BOOL "" FORCE)
set(LIBSPLICE_TESTS OFF CACHE BOOL "" FORCE)
set(LIBSPLICE_WERROR ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD OFF CACHE BOOL "" FORCE)
