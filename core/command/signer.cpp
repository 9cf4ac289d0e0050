// SPDX-License-Identifier: GPL-3.0-or-later
// proofwalk signer DIR --name N --firm F: a person's signing key.
#include "core/command/command.h"
#include "core/command/places.h"

#include "core/journal/identity.h"

namespace proofwalk::command {
namespace {

Exit run(Face& face, const Options& options)
{
    auto words = passphrase(options, face.phrase("signer.prompt"));
    if (!words) return face.cannot(words.error());
    const journal::Person person{options.value("--name"), options.value("--firm")};
    auto made = journal::createIdentity(options.words[0], person, *words);
    if (!made) return face.cannot(made.error());
    auto facts = journal::describeIdentity(options.words[0]);
    if (!facts) return face.cannot(facts.error());
    face.say("signer.done", {{"name", facts->name},
                             {"firm", facts->firm},
                             {"folder", options.words[0]},
                             {"fingerprint", facts->rootFingerprint}});
    face.answer("signer", {{"name", facts->name}, {"firm", facts->firm}, {"root", facts->rootFingerprint}});
    return Exit::well;
}

} // namespace

Command signerCommand()
{
    return {{"signer", {"DIR"}, {{"--name", "N", true}, {"--firm", "F", true}, {"--passphrase-file", "FILE"}}}, run};
}

} // namespace proofwalk::command
