// SPDX-License-Identifier: GPL-3.0-or-later
// The building cut open, from the floors and rooms of a list. Its user gives it its accessible name.
#pragma once

#include "core/report/sectionpicture.h"

#include "qml/parts/rowreader.h"

#include <map>

namespace proofwalk::parts {

class SectionPicture : public proofwalk::parts::RowReader {
    Q_OBJECT
    QML_ELEMENT
    /// Roles: floor, level, outside, room, verdict, here, caption. Rooms of one floor need not stand together.
    Q_PROPERTY(QAbstractItemModel* rooms READ rooms WRITE setRooms NOTIFY roomsChanged)
    Q_PROPERTY(bool showWords READ showWords WRITE setShowWords NOTIFY showWordsChanged)
    Q_PROPERTY(bool showMarks READ showMarks WRITE setShowMarks NOTIFY showMarksChanged) ///< and the person

public:
    explicit SectionPicture(QQuickItem* parent = nullptr);
    QAbstractItemModel* rooms() const { return source(); }
    void setRooms(QAbstractItemModel* rooms);
    bool showWords() const { return m_show.words; }
    void setShowWords(bool show);
    bool showMarks() const { return m_show.marks; }
    void setShowMarks(bool show);

    /// The row of the room at that place of the picture, -1 for none. Of merged rooms the one where you stand, else the
    /// first with the verdict that is shown.
    Q_INVOKABLE int roomAt(double x, double y) const;
    /// Where the room of that row lies; empty if there is none.
    Q_INVOKABLE QRectF boxOf(int row) const;

Q_SIGNALS:
    void roomsChanged();
    void showWordsChanged();
    void showMarksChanged();

protected:
    void draw(report::Drawing& drawing) override;
    void reread() override;

private:
    report::SectionPlan plan() const;

    std::vector<report::Floor> m_floors;
    std::map<report::RoomName, int> m_rows;
    report::SectionShow m_show;
};

} // namespace proofwalk::parts
