// SPDX-License-Identifier: GPL-3.0-or-later
// What lies under a sheet is out of reach while the sheet is up: to the thumb, to the keyboard and to who only hears.
#pragma once

#include <QPointer>
#include <QQuickItem>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace proofwalk::parts {

/// Disables everything of the page around `sheet` but the sheet, from "up" to not "up", and then enables what it disabled:
/// an item that a page turns off of itself meanwhile must be hidden instead.
/// The page is the nearest focus scope around that is no Loader; what stands outside of it stays in reach.
class Cover : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QQuickItem* sheet MEMBER m_sheet)
    Q_PROPERTY(bool up READ isUp WRITE setUp)

public:
    using QObject::QObject;
    ~Cover() override { lift(); }
    bool isUp() const { return m_up; }
    void setUp(bool up);

private:
    void lay();
    void lift();

    QPointer<QQuickItem> m_sheet;
    std::vector<QPointer<QQuickItem>> m_covered; ///< only those that were enabled
    bool m_up = false;
};

} // namespace proofwalk::parts
