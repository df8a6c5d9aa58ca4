# The core and its tests under the thread sanitizer, without Qt. Read before CMakeLists.txt:
# cmake -S . -B .build/threads -G Ninja -C app/presets/threads.cmake
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CMAKE_CXX_FLAGS "-fsanitize=thread -fno-omit-frame-pointer -O1" CACHE STRING "")
set(RIBWRIGHT_WINDOW OFF CACHE BOOL "")
set(RIBWRIGHT_BENCH OFF CACHE BOOL "")
