// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/command/planning.h"

#include "core/command/places.h"

namespace proofwalk::command {
std::expected<ReviewedPlan, Exit> readAndReview(Face& face, const Options& options)
{
    auto files = catalogueFiles(options);
    if (!files) return std::unexpected(face.cannot(files.error()));
    auto reviewed = walk::readAndReview(options.has("--plan") ? options.value("--plan") : options.words.at(0), *files);
    if (reviewed) return std::move(*reviewed);
    for (const Error& error : reviewed.error()) (void)face.cannot(error);
    return std::unexpected(Exit::cannot);
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
