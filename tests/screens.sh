#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Draws every screen in every state, size and look into FOLDER as PLACE-STATE-WIDTHxHEIGHT-LOOK.png, and tells what of it
# cannot be read, met or heard. The states stand in tests/screens/states.txt.
#   sh tests/screens.sh FOLDER [FILTER]      FILTER: a part of a state's name, "walk-card"
# PROOFWALK_BUILD names another build folder than build/dev; it is then taken as it is.
set -eu
[ $# -ge 1 ] || { echo "screens.sh: name a folder for the pictures" >&2; exit 2; }
mkdir -p "$1"
folder=$(cd "$1" && pwd)
cd "$(dirname "$0")/.."
if [ -z "${PROOFWALK_BUILD:-}" ]; then
    sh tests/packages.sh test
    sh tests/build.sh dev proofwalk-screens >&2
fi
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software QT_SCALE_FACTOR=1 LC_ALL=C.UTF-8 TZ=UTC
exec "${PROOFWALK_BUILD:-build/dev}/tests/qml/screens/proofwalk-screens" --to "$folder" "${2:-}"
