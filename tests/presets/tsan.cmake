# The thread sanitizer, for the one test in which threads share a book:
#   cmake -C tests/presets/tsan.cmake -S . -B build/tsan -G Ninja
#   cmake --build build/tsan --target test_abi_threads
#   ctest --test-dir build/tsan -R '^abi_threads'
set(CMAKE_BUILD_TYPE Debug CACHE STRING "" FORCE)
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1 -fsanitize=thread" CACHE STRING "" FORCE)
set(CMAKE_C_FLAGS_DEBUG "-O1 -g1 -fsanitize=thread" CACHE STRING "" FORCE)
set(LIBSPLICE_TESTS ON CACHE BOOL "" FORCE)
set(LIBSPLICE_WERROR ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD ON CACHE BOOL "" FORCE)
set(CMAKE_UNITY_BUILD_BATCH_SIZE 16 CACHE STRING "" FORCE)
