# Address and undefined-behaviour sanitizers; the first finding ends the test:
#   cmake -C tests/presets/asan.cmake -S . -B build/asan
set(sanitizers "-fsanitize=address,undefined -fno-sanitize-recover=all")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "" FORCE)
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1 -fno-omit-frame-pointer -D_GLIBCXX_ASSERTIONS ${sanitizers}"
    CACHE STRING "" FORCE)
set(CMAKE_C_FLAGS_DEBUG "-O1 -g1 -fno-omit-frame-pointer ${sanitizers}" CACHE STRING "" FORCE)
set(LIBSPLICE_TESTS ON CACHE BOOL "" FORCE)
set(LIBSPLICE_WERROR ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD_BATCH_SIZE 16 CACHE STRING "" FORCE)
