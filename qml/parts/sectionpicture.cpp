// SPDX-License-Identifier: GPL-3.0-or-later
#include "qml/parts/sectionpicture.h"

#include "core/report/section.h"
#include "qml/parts/kinds.h"
#include "qml/parts/words.h"

#include <algorithm>
#include <ranges>

namespace proofwalk::parts {
namespace {

report::Floor& floorNamed(std::vector<report::Floor>& floors, const std::string& name)
{
    const auto found = std::ranges::find(floors, name, &report::Floor::name);
    if (found != floors.end()) return *found;
    report::Floor floor;
    floor.name = name;
    return floors.emplace_back(std::move(floor));
}

report::Labels labels()
{
    report::Labels labels;
    labels.rooms = phrase("window.drawn.rooms", {{"count", "{count}"}}).toStdString();
    labels.floors = phrase("window.drawn.floors", {{"count", "{count}"}}).toStdString();
    return labels;
}

} // namespace

SectionPicture::SectionPicture(QQuickItem* parent) : RowReader(QSizeF(78, 46), parent) {}

void SectionPicture::setRooms(QAbstractItemModel* rooms)
{
    if (setSource(rooms)) Q_EMIT roomsChanged();
}

void SectionPicture::setShowWords(bool show)
{
    if (!take(m_show.words, show)) return;
    reread();
    Q_EMIT showWordsChanged();
}

void SectionPicture::setShowMarks(bool show)
{
    if (take(m_show.marks, show)) Q_EMIT showMarksChanged();
}

void SectionPicture::reread()
{
    m_floors.clear();
    m_rows.clear();
    m_show.here.reset();
    for (int row = 0; row < rows(); ++row) {
        report::Floor& floor = floorNamed(m_floors, at(row, "floor").toString().toStdString());
        floor.level = at(row, "level").toInt();
        floor.outside = at(row, "outside").toBool();
        report::Room room;
        room.name = at(row, "room").toString().toStdString();
        room.verdict = verdictOf(at(row, "verdict").toInt()).value_or(report::Verdict::toDo);
        room.word = at(row, "caption").toString().toStdString();
        const report::RoomName name{floor.name, room.name};
        m_rows.try_emplace(name, row);
        if (at(row, "here").toBool()) m_show.here = name;
        floor.rooms.push_back(std::move(room));
    }
    // With words a storey has a height of its own; without, the picture is a sign and as large as it is made.
    if (m_show.words) setImplicitHeight(1.4 * report::sectionHeight(m_floors));
}

report::SectionPlan SectionPicture::plan() const
{
    return report::planSection(QRectF(0, 0, width(), height()), m_floors, labels(), m_show);
}

int SectionPicture::roomAt(double x, double y) const
{
    for (const report::PlacedCell& placed : plan().cells) {
        if (!placed.box.contains(x, y)) continue;
        if (placed.here) return m_rows.at(*m_show.here);
        for (const report::RoomName& room : placed.cell.rooms) {
            const int row = m_rows.at(room);
            if (verdictOf(at(row, "verdict").toInt()) == placed.cell.verdict) return row;
        }
        return m_rows.at(placed.cell.rooms.front());
    }
    return -1;
}

QRectF SectionPicture::boxOf(int row) const
{
    for (const report::PlacedCell& placed : plan().cells)
        for (const report::RoomName& room : placed.cell.rooms)
            if (m_rows.at(room) == row) return placed.box;
    return {};
}

void SectionPicture::draw(report::Drawing& drawing) { drawSectionPicture(drawing, plan()); }

} // namespace proofwalk::parts
