# Read before CMakeLists.txt: cmake -S . -B .build/debug -G Ninja -C app/presets/debug.cmake
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
