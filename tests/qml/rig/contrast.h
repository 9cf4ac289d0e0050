// SPDX-License-Identifier: GPL-3.0-or-later
// Contrast after WCAG 2.2 (W3C Recommendation): relative luminance and contrast ratio as defined there, 4.5:1 for text
// (1.4.3), 3:1 for large text and for parts of controls (1.4.11). Large is 24 px, or bold 18.66 px. From memory.
#pragma once

#include "tests/qml/rig/finding.h"

#include <QColor>
#include <QImage>
#include <QQuickWindow>

namespace proofwalk::rig {

/// 0 for black to 1 for white.
double luminance(const QColor& colour);

/// 1 to 21. Both colours are taken as opaque.
double contrast(const QColor& one, const QColor& other);

/// The ratio of the darkest and the lightest pixel of that part of a grab, in the grab's own pixels; 1 if it is empty.
/// Smoothed edges make it smaller than the colours' own.
double contrastIn(const QImage& grab, const QRect& part);

/// The colour most pixels of that part have.
QColor groundOf(const QImage& grab, const QRect& part);

/// Every text of the window against the ground it was drawn on. Rules: contrast (its colour against the commonest pixel
/// around it is below the ratio wanted), faint (what was really drawn is below 3: covered, clear, or not drawn).
Findings contrasts(const QQuickWindow& window, const QImage& grab);

} // namespace proofwalk::rig
