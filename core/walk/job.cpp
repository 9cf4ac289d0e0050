// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/job.h"

#include "core/base/digest.h"
#include "core/plan/rows.h"
#include "core/walk/command.h"

namespace proofwalk::walk {
namespace {

/// Hashes the file, keeps its bytes with the draft, and lists it.
void embed(journal::Draft& draft, StartBody::Listed& list, const std::string& path, std::string bytes)
{
    list.emplace_back(path, base::sha256Hex(bytes));
    draft.contents.push_back(std::move(bytes));
}

journal::Draft startDraft(StartGround ground)
{
    journal::Draft draft;
    draft.kind = "start";
    plan::giveIds(ground.plan);
    const auto commit = [&](const std::string& value) {
        draft.privates.push_back(journal::sealPrivate(value));
        return draft.privates.back().commitment;
    };
    StartBody body;
    body.program = PROOFWALK_VERSION;
    body.judgement = judgementVersion;
    std::string rows = base::canonical(plan::toRows(ground.plan, commit));
    body.plan = base::sha256Hex(rows);
    draft.contents.push_back(std::move(rows));
    for (auto& [path, bytes] : ground.catalogue) embed(draft, body.catalogue, path, std::move(bytes));
    embed(draft, body.tables, "conductors.csv", std::move(ground.conductors));
    for (auto& [path, bytes] : ground.words) embed(draft, body.words, path, std::move(bytes));
    draft.body = toJson(body, {});
    return draft;
}

} // namespace

Job::Job(journal::Journal journal, Judged judged, const journal::Record& record)
    : m_journal(std::move(journal)), m_judged(std::move(judged))
{
    Privates privates;
    for (const auto& [commitment, value] : record.privates) privates[commitment] = value.value;
    m_privates = std::make_shared<const Privates>(std::move(privates));
}

Result<Job> Job::start(const std::filesystem::path& file, StartGround ground,
                       std::shared_ptr<const journal::SigningKey> key, const base::WallClock& now)
{
    // What cannot be judged must not become a job: try it out before there is a file.
    auto catalogue = catalogue::Catalogue::read(ground.catalogue);
    if (!catalogue) return passOn(catalogue);
    auto conductors = measure::readConductors(ground.conductors, "conductors.csv");
    if (!conductors) return passOn(conductors);
    plan::giveIds(ground.plan);
    if (auto scope = makeScope(ground.plan, std::move(*catalogue), *conductors); !scope) return passOn(scope);

    auto journal = journal::Journal::create(file, std::move(key));
    if (!journal) return passOn(journal);
    std::vector<journal::Draft> drafts;
    drafts.push_back(startDraft(std::move(ground)));
    if (auto stored = journal->append(std::move(drafts), now); !stored) return passOn(stored);
    auto record = journal->record();
    if (!record) return passOn(record);
    auto judged = judgeRecord(*record);
    if (!judged) return passOn(judged);
    return Job(std::move(*journal), std::move(*judged), *record);
}

Result<Job> Job::open(const std::filesystem::path& file, std::shared_ptr<const journal::SigningKey> key)
{
    auto journal = journal::Journal::open(file, std::move(key));
    if (!journal) return passOn(journal);
    auto record = journal->record();
    if (!record) return passOn(record);
    auto judged = judgeRecord(*record);
    if (!judged) return std::unexpected(std::move(judged.error()).within(file.string()));
    return Job(std::move(*journal), std::move(*judged), *record);
}

Result<int> Job::take(std::string_view line, const std::filesystem::path& folder, const base::WallClock& now)
{
    auto drafts = draftsFor({m_judged.state, folder}, line);
    if (!drafts) return passOn(drafts);
    const int count = static_cast<int>(drafts->size());
    if (auto appended = append(std::move(*drafts), now); !appended) return passOn(appended);
    return count;
}

Result<void> Job::append(std::vector<journal::Draft> drafts, const base::WallClock& now)
{
    Privates added;
    for (const journal::Draft& draft : drafts)
        for (const journal::Private& each : draft.privates) added[each.commitment] = each.value;
    auto stored = m_journal.append(std::move(drafts), now);
    if (!stored) return passOn(stored);
    for (const journal::Event& event : *stored) apply(m_judged.state, event);
    if (!added.empty()) {
        added.insert(m_privates->begin(), m_privates->end());
        m_privates = std::make_shared<const Privates>(std::move(added));
    }
    return {};
}

} // namespace proofwalk::walk
