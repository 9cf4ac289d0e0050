// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/planning.h"

#include "core/base/datafolder.h"
#include "core/command/places.h"
#include "core/plan/read.h"

#include <algorithm>

namespace proofwalk::command {
namespace {

/// Every cell that cannot be read, so that a sheet is mended in one go.
void tellUnreadable(Face& face, const std::vector<Error>& errors)
{
    for (const Error& error : errors) (void)face.cannot(error);
}

} // namespace

std::expected<ReviewedPlan, Exit> readAndReview(Face& face, const Options& options)
{
    auto files = catalogueFiles(options);
    if (!files) return std::unexpected(face.cannot(files.error()));
    auto catalogue = catalogue::Catalogue::read(std::move(*files));
    if (!catalogue) return std::unexpected(face.cannot(catalogue.error()));
    auto knowledge = review::Knowledge::read(base::dataFolder());
    if (!knowledge) return std::unexpected(face.cannot(knowledge.error()));

    auto plan = plan::readPlan(options.has("--plan") ? options.value("--plan") : options.words.at(0));
    if (!plan) {
        tellUnreadable(face, plan.error());
        return std::unexpected(Exit::cannot);
    }
    ReviewedPlan reviewed;
    reviewed.remarks = review::reviewPlan(*plan, *catalogue, *knowledge);
    reviewed.plan = std::move(*plan);
    const auto count = [&](review::Severity severity) {
        return static_cast<int>(std::ranges::count(reviewed.remarks, severity, &review::Remark::severity));
    };
    reviewed.errors = count(review::Severity::error);
    reviewed.warnings = count(review::Severity::warning);
    std::ranges::stable_sort(reviewed.remarks, {}, &review::Remark::severity);
    return reviewed;
}

void sayRemarks(Face& face, const ReviewedPlan& reviewed)
{
    for (const review::Remark& remark : reviewed.remarks)
        face.say("check.remark", {{"severity", face.phrase("check." + std::string(review::wordOf(remark.severity)))},
                                  {"what", face.book().sentence({remark.code, remark.where, remark.arguments})}});
}

base::Json remarkJson(const Face& face, const review::Remark& remark)
{
    base::Json json = face.errorJson({remark.code, remark.where, remark.arguments});
    json["check"] = remark.check;
    json["severity"] = review::wordOf(remark.severity);
    return json;
}

} // namespace proofwalk::command
