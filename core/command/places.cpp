// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/places.h"

#include "core/base/datafolder.h"
#include "core/base/file.h"

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace proofwalk::command {
namespace {

/// Asks at the terminal with the echo off, whatever stdin and stdout are.
Result<std::string> askHidden(std::string_view prompt)
{
    const int terminal = ::open("/dev/tty", O_RDWR | O_CLOEXEC);
    if (terminal < 0) return failure("passphrase.no-terminal", "--passphrase-file");
    termios shown{};
    ::tcgetattr(terminal, &shown);
    termios hidden = shown;
    hidden.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    ::tcsetattr(terminal, TCSAFLUSH, &hidden);
    std::string answer;
    char c = 0;
    if (::write(terminal, prompt.data(), prompt.size()) >= 0)
        while (::read(terminal, &c, 1) == 1 && c != '\n' && answer.size() < 1024) answer += c;
    ::tcsetattr(terminal, TCSAFLUSH, &shown);
    if (::write(terminal, "\n", 1) < 0) answer.clear();
    ::close(terminal);
    return answer;
}

} // namespace

Result<catalogue::Files> catalogueFiles(const Options& options)
{
    const std::string folder = options.value("--catalogue");
    return catalogue::readFolder(folder.empty() ? base::dataFolder() / "catalogue" : std::filesystem::path(folder));
}

Result<std::string> passphrase(const Options& options, std::string_view prompt)
{
    std::string words;
    if (const std::string file = options.value("--passphrase-file"); !file.empty()) {
        auto bytes = base::readFile(file, 4096);
        if (!bytes) return passOn(bytes);
        words = bytes->substr(0, bytes->find('\n'));
    } else {
        auto asked = askHidden(prompt);
        if (!asked) return asked;
        words = *asked;
    }
    if (words.empty()) return failure("passphrase.empty", "--passphrase-file");
    return words;
}

} // namespace proofwalk::command
