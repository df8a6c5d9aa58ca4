# Read before CMakeLists.txt: cmake -S . -B .build/release -G Ninja -C app/presets/release.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
