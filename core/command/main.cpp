// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/command.h"

#include <iostream>
#include <string>
#include <vector>

int main(int argc, char** argv)
{
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    return static_cast<int>(proofwalk::command::runWords(arguments, std::cout, std::cerr));
}
