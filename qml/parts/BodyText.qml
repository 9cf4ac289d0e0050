// SPDX-License-Identifier: GPL-3.0-or-later
// Steps, rows, sentences.
import Proofwalk.Parts

Lettering {}
