#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds into build/NAME; the program is then build/NAME/proofwalk.
#   sh tests/build.sh dev [TARGETS]        quick to build, with assertions: what the tests run
#   sh tests/build.sh release [TARGETS]    what is handed out
#   sh tests/build.sh asan [TARGETS]       with AddressSanitizer and UndefinedBehaviorSanitizer
#   sh tests/build.sh nowindow [TARGETS]   without a window, and without precompiled headers, so that no file forgets
#                                          an include
# PROOFWALK_JOBS limits how many compilers run at once; without it as many as there are processors.
set -eu
cd "$(dirname "$0")/.."

name=${1:-}
case "$name" in
dev) set -- "$@" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG='-O0 -g1' ;;
release) set -- "$@" -DCMAKE_BUILD_TYPE=RelWithDebInfo -DPROOFWALK_TESTS=OFF ;;
asan) set -- "$@" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG='-O1 -g1' -DPROOFWALK_SANITIZE=ON \
    -DPROOFWALK_QMLCACHE=OFF ;;
nowindow) set -- "$@" -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG='-O0 -g1' -DPROOFWALK_TESTS=OFF \
    -DPROOFWALK_WINDOW=OFF -DPROOFWALK_PRECOMPILE=OFF ;;
*) echo "build.sh: name one of dev, release, asan, nowindow" >&2; exit 2 ;;
esac
shift

# The arguments are now the targets, then the options, which begin with -D.
targets=
for argument in "$@"; do
    shift
    case "$argument" in
    -D*) set -- "$@" "$argument" ;;
    *) targets="$targets $argument" ;;
    esac
done

# A clone elsewhere, or another build folder, finds the same objects in the cache.
CCACHE_BASEDIR=$(pwd)
CCACHE_NOHASHDIR=1
CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime
export CCACHE_BASEDIR CCACHE_NOHASHDIR CCACHE_SLOPPINESS

mkdir -p "build/$name"
cmake -S . -B "build/$name" -G Ninja "$@" >"build/$name/configure.log" 2>&1 || {
    cat "build/$name/configure.log"
    exit 1
}
# Unquoted: each word of $targets is a target.
ninja -C "build/$name" -j "${PROOFWALK_JOBS:-$(nproc)}" $targets
