// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/walk/starting.h"

#include "core/base/datafolder.h"
#include "core/base/file.h"
#include "core/plan/read.h"

#include <algorithm>
#include <system_error>

namespace proofwalk::walk {
namespace {

/// The sentences the job is told in, to be embedded with it.
Result<std::map<std::string, std::string>> wordFiles()
{
    std::map<std::string, std::string> files;
    const auto folder = base::dataFolder() / "words" / "english";
    std::error_code trouble;
    for (const auto& entry : std::filesystem::directory_iterator(folder, trouble)) {
        if (entry.path().extension() != ".toml") continue;
        auto bytes = base::readFile(entry.path());
        if (!bytes) return passOn(bytes);
        files["english/" + entry.path().filename().string()] = std::move(*bytes);
    }
    if (trouble) return failure("file.unreadable", folder.string(), {{"detail", trouble.message()}});
    return files;
}

} // namespace

std::expected<ReviewedPlan, std::vector<Error>> readAndReview(const std::filesystem::path& folder,
                                                              const catalogue::Files& catalogue)
{
    const auto one = [](Error error) { return std::unexpected(std::vector<Error>{std::move(error)}); };
    auto sheets = catalogue::Catalogue::read(catalogue);
    if (!sheets) return one(std::move(sheets.error()));
    auto knowledge = review::Knowledge::read(base::dataFolder());
    if (!knowledge) return one(std::move(knowledge.error()));
    auto plan = plan::readPlan(folder);
    if (!plan) return std::unexpected(std::move(plan.error()));

    ReviewedPlan reviewed;
    reviewed.remarks = review::reviewPlan(*plan, *sheets, *knowledge);
    reviewed.plan = std::move(*plan);
    const auto count = [&](review::Severity severity) {
        return static_cast<int>(std::ranges::count(reviewed.remarks, severity, &review::Remark::severity));
    };
    reviewed.errors = count(review::Severity::error);
    reviewed.warnings = count(review::Severity::warning);
    std::ranges::stable_sort(reviewed.remarks, {}, &review::Remark::severity);
    return reviewed;
}

Result<StartGround> groundFor(plan::Plan plan, catalogue::Files catalogue)
{
    auto conductors = base::readFile(base::dataFolder() / "measure" / "conductors.csv");
    if (!conductors) return passOn(conductors);
    auto words = wordFiles();
    if (!words) return passOn(words);
    return StartGround{std::move(plan), std::move(catalogue), std::move(*conductors), std::move(*words)};
}

} // namespace proofwalk::walk
