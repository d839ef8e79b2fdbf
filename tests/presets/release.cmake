# As a user gets it: cmake -C tests/presets/release.cmake -S . -B build/release
set(CMAKE_BUILD_TYPE Release CACHE STRING "" FORCE)
set(LIBSPLICE_TESTS ON CACHE BOOL "" FORCE)
set(LIBSPLICE_WERROR ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD ON CACHE BOOL "" FORCE)
