#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# The unit tests once more, under AddressSanitizer and UndefinedBehaviorSanitizer. Not those that are killed, that draw
# pictures or that measure time: there the sanitizers find nothing more and cost much.
set -eu
cd "$(dirname "$0")/../.."
sh tests/build.sh asan -DPROOFWALK_CI=OFF
# The usual number of rounds: each takes several times as long here.
unset PROOFWALK_ROUNDS PROOFWALK_LONG
ASAN_OPTIONS=detect_stack_use_after_return=1:strict_string_checks=1
UBSAN_OPTIONS=print_stacktrace=1
export ASAN_OPTIONS UBSAN_OPTIONS
exec ctest --test-dir build/asan -j 2 -L '^unit$' -LE '^(crash|pictures|bench)$' --output-on-failure
