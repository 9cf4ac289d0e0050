// SPDX-License-Identifier: GPL-3.0-or-later
// Words given: the command line, which needs no display. None: the window.
#include "core/command/command.h"
#include "qml/window.h"

#include <iostream>
#include <string>
#include <vector>

int main(int argc, char** argv)
{
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    if (arguments.empty()) return proofwalk::window::run(argc, argv);
    return static_cast<int>(proofwalk::command::runWords(arguments, std::cout, std::cerr));
}
