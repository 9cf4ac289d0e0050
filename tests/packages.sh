#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The project's one list of Debian packages, and the step that installs what is missing of it.
#   sh tests/packages.sh demo     what building and running the program needs
#   sh tests/packages.sh test     and what its tests need
#   sh tests/packages.sh ci       and the linters
#   sh tests/packages.sh list     prints the whole list, one a line
set -eu

# To build the program.
build='
g++ cmake ninja-build ccache
libfmt-dev libsimdjson-dev libtomlplusplus-dev libcsv-dev libsqlite3-dev libssl-dev
libboost-dev libqpdf-dev libqrencode-dev libjpeg-dev libpng-dev libsndfile1-dev libkissfft-dev
qt6-base-dev libqt6opengl6-dev qt6-charts-dev qt6-svg-dev qt6-declarative-dev qt6-pdf-dev pkg-config
'
# To run it: nothing above pulls the picture plugin, the two typefaces, or what QML imports. No QML module pulls another,
# and workerscript and templates are wanted by "import QtQuick" and by controls without being named in any file.
run='
fonts-b612 fonts-clear-sans libqt6svg6
qml6-module-qtqml qml6-module-qtqml-models qml6-module-qtqml-workerscript
qml6-module-qtquick qml6-module-qtquick-window qml6-module-qtquick-templates
'
# What the tests ask for a second opinion, and what the demonstration checks the report with.
judge='
poppler-utils qpdf openssl sqlite3 python3
'
test='
librapidcheck-dev qml6-module-qttest qml6-module-qtquick-controls qt6-base-private-dev libxkbcommon-dev
'
ci='
clang-19 clang-tidy-19 clang-format-19 git
'

case "${1:-}" in
demo) want="$build $run $judge" ;;
test) want="$build $run $judge $test" ;;
ci) want="$build $run $judge $test $ci" ;;
list) printf '%s\n' $build $run $judge $test $ci; exit 0 ;;
*) echo "packages.sh: name one of demo, test, ci, list" >&2; exit 2 ;;
esac

missing=
for package in $want; do
    status=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$status" = installed ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

as_root=
if [ "$(id -u)" != 0 ]; then
    command -v sudo >/dev/null 2>&1 || {
        echo "These Debian packages are missing, and only root can install them:$missing" >&2
        exit 2
    }
    as_root=sudo
fi
echo "Installing:$missing"
$as_root apt-get update -qq
$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >/dev/null
