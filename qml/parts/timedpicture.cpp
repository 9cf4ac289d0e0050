// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/timedpicture.h"

#include <algorithm>

namespace proofwalk::parts {

std::optional<double> TimedPicture::share(double seconds) const
{
    if (!std::isfinite(seconds) || !std::isfinite(m_full) || m_full <= 0) return {};
    return std::clamp(seconds / m_full, 0.0, 1.0);
}

} // namespace proofwalk::parts
