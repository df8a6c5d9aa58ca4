# The core and its tests under the address and undefined-behaviour sanitizers, without Qt. Read before CMakeLists.txt:
# cmake -S . -B .build/sanitize -G Ninja -C app/presets/sanitize.cmake
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS "-fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer -O1" CACHE STRING "")
set(RIBWRIGHT_WINDOW OFF CACHE BOOL "")
set(RIBWRIGHT_BENCH OFF CACHE BOOL "")
