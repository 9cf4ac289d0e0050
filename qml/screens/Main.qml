// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Window
import Proofwalk.Parts

Window {
    id: window

    width: 360
    height: 780
    visible: true
    title: Words.of("window.title")
    color: Theme.film
}
