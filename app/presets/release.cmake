# Read before CMakeLists.txt: cmake -S . -B .build/release -G Ninja -C app/presets/release.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")  # the sources of a library are compiled several at a time, headers once for them
