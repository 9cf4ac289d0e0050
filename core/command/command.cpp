// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/command.h"

#include "core/base/datafolder.h"
#include "core/base/text.h"

#include <algorithm>
#include <array>

namespace proofwalk::command {
namespace {

std::array<Command, 11> allCommands()
{
    return {checkCommand(),  kindsCommand(),  startCommand(),  orderCommand(), takeCommand(),  whereCommand(),
            reportCommand(), verifyCommand(), signerCommand(), workCommand(),  listenCommand()};
}

void listCommands(Face& face)
{
    face.say("help.program", {});
    for (const Command& command : allCommands()) {
        face.say("  " + usageLine(command.usage));
        face.say("      " + face.phrase("help." + std::string(command.usage.command) + ".short"));
    }
    face.say("help.common", {});
    base::Json::Array commands;
    for (const Command& command : allCommands())
        commands.push_back(
            base::Json::Object{{"command", std::string(command.usage.command)},
                               {"usage", usageLine(command.usage)},
                               {"short", face.phrase("help." + std::string(command.usage.command) + ".short")}});
    face.answer("help", {{"commands", std::move(commands)}});
}

void helpFor(Face& face, const Usage& usage)
{
    const std::string code = "help." + std::string(usage.command);
    face.say(usageLine(usage));
    face.say(face.phrase(code + ".short"));
    face.say("");
    face.say(face.phrase(code));
    for (const OptionSpec& option : usage.options)
        face.say("  " + std::string(option.name) + (option.value.empty() ? "" : " ") + std::string(option.value) + "  "
                 + face.phrase(code + std::string(option.name)));
    face.say("help.common", {});
    base::Json options;
    for (const OptionSpec& option : usage.options)
        options[std::string(option.name)] = face.phrase(code + std::string(option.name));
    base::Json::Object answer{
        {"usage", usageLine(usage)}, {"short", face.phrase(code + ".short")}, {"help", face.phrase(code)}};
    if (!usage.options.empty()) answer["options"] = std::move(options);
    face.answer(std::string(usage.command).c_str(), std::move(answer));
}

Exit unknownCommand(Face& face, const std::string& word)
{
    std::vector<std::string> known;
    for (const Command& command : allCommands()) known.emplace_back(command.usage.command);
    return face.cannot({"word.unknown-command", word, {{"nearest", base::nearestWord(word, known)}}});
}

} // namespace

Exit runWords(std::span<const std::string> arguments, std::ostream& out, std::ostream& err)
{
    const bool json = std::ranges::find(arguments, "--json") != arguments.end();
    auto book = words::Book::open(base::dataFolder() / "words" / "english");
    if (!book) {
        err << "proofwalk: the sentences are missing or damaged (" << book.error().where << ", " << book.error().code
            << "). Install the program again, or set PROOFWALK_DATA to its data folder.\n";
        return Exit::cannot;
    }
    Face face(out, err, *book, json);
    for (const std::string& word : arguments)
        if (!base::isUtf8(word)) return face.cannot({"word.not-utf8", word, {}});
    if (arguments.empty() || arguments.front() == "--help" || arguments.front() == "help") {
        listCommands(face);
        return arguments.empty() ? Exit::cannot : Exit::well;
    }
    if (arguments.front() == "--version") {
        face.say("proofwalk " PROOFWALK_VERSION);
        face.answer("version", {{"version", PROOFWALK_VERSION}});
        return Exit::well;
    }
    const auto commands = allCommands();
    const auto found =
        std::ranges::find(commands, arguments.front(), [](const Command& each) { return each.usage.command; });
    if (found == commands.end()) return unknownCommand(face, arguments.front());
    auto options = parseOptions(found->usage, arguments.subspan(1));
    if (!options) return face.cannot(options.error());
    if (options->has("--help")) {
        const auto helped = found->help == nullptr ? std::nullopt : found->help(face, *options);
        if (helped) return *helped;
        helpFor(face, found->usage);
        return Exit::well;
    }
    return found->run(face, *options);
}

} // namespace proofwalk::command
