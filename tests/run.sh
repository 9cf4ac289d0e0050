#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds, and runs the tests. The last lines are ctest's summary; its exit status is ours.
#   sh tests/run.sh          budget from nothing on two cores: 25 minutes, 4 to install, 9 to build, 12 to test
#   sh tests/run.sh --ci     besides lint, the build without a window, the sanitizers, longer rounds; 70 minutes
#   sh tests/run.sh --long   besides what takes longer still
# Which group of tests may take how long stands in tests/CMakeLists.txt; how long it took, in seconds of one processor,
# stands in the summary.
set -eu
cd "$(dirname "$0")/.."

packages="test"
ci=OFF
for argument in "$@"; do
    case "$argument" in
    --ci)
        packages=ci
        ci=ON
        PROOFWALK_ROUNDS=${PROOFWALK_ROUNDS:-10} # times the usual number
        export PROOFWALK_ROUNDS
        ;;
    --long)
        PROOFWALK_LONG=1
        export PROOFWALK_LONG
        ;;
    *)
        echo "run.sh: $argument is none of --ci, --long" >&2
        exit 2
        ;;
    esac
done

begun=$(date +%s)
minutes() # says how long the step took that has just ended
{
    now=$(date +%s)
    echo "$1: $(((now - begun) / 60)) min $(((now - begun) % 60)) s"
    begun=$now
}

sh tests/packages.sh "$packages"
minutes "Installed"
sh tests/build.sh dev -DPROOFWALK_CI=$ci
[ -z "${PROOFWALK_LONG:-}" ] || sh tests/build.sh release # what the benches start
minutes "Built"
exec ctest --test-dir build/dev -j 2 --output-on-failure
