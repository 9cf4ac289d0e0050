// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/sectionpicture.h"

#include "core/report/marks.h"
#include "core/report/person.h"

#include <algorithm>
#include <cmath>

namespace proofwalk::report {

namespace {

constexpr double leastHut = 8;     ///< narrower, the huts of a place become one
constexpr double spareForName = 14;

double whole(double number) { return std::round(number); }

QRectF whole(const QRectF& box)
{
    return {QPointF(whole(box.left()), whole(box.top())), QPointF(whole(box.right()), whole(box.bottom()))};
}

bool isHere(const Cell& cell, const SectionShow& show)
{
    return show.here && std::ranges::find(cell.rooms, *show.here) != cell.rooms.end();
}

void placeRow(SectionPlan& plan, const std::vector<Cell>& cells, const QRectF& row, double gap)
{
    const auto count = static_cast<double>(cells.size());
    const double width = (row.width() - gap * (count - 1)) / count;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double left = row.left() + static_cast<double>(i) * (width + gap);
        plan.cells.push_back(
            {whole(QRectF(left, row.top(), width, row.height())), cells[i], isHere(cells[i], plan.show)});
    }
}

void placeHuts(SectionPlan& plan, const Labels& labels)
{
    const QRectF& yard = plan.geometry.yard;
    const double gap = plan.box.width() < 160 ? 2 : 6;
    const auto places = static_cast<double>(plan.house.huts.size());
    const double share = (yard.width() - gap * (places - 1)) / std::max(places, 1.0);
    double left = yard.left();
    for (const Storey& hut : plan.house.huts) {
        const QRectF row(left, yard.top(), share, yard.height());
        const auto cells = static_cast<double>(hut.cells.size());
        const bool narrow = hut.cells.size() > 1 && (share - gap * (cells - 1)) / cells < leastHut;
        placeRow(plan, narrow ? std::vector{merged(hut.cells, labels.rooms)} : hut.cells, row, gap);
        left += share + gap;
    }
}

void drawGable(Drawing& drawing, const SectionPlan& plan)
{
    const QRectF& body = plan.geometry.body;
    const double eaves = body.top();
    const double reach = std::max(2.0, body.left() - plan.box.left());
    QPainterPath roof(QPointF(body.left() - reach, eaves));
    roof.lineTo(body.center().x(), eaves - plan.geometry.roof + 1.5 * plan.wall);
    roof.lineTo(body.right() + reach, eaves);
    roof.closeSubpath();
    drawing.fill(roof, drawing.inks().roof);
    drawing.stroke(roof, drawing.inks().ink, 0.85 * plan.wall);
}

void drawGround(Drawing& drawing, const SectionPlan& plan)
{
    const double y = plan.geometry.earth;
    const QColor& ink = drawing.inks().ink;
    drawing.line(plan.box.left(), y, plan.box.right(), y, ink, 1.5 * plan.wall);
    const double depth = std::min(10.0, plan.box.bottom() - y - 2);
    if (plan.house.storeys.empty() || plan.box.width() < 160 || depth < 5) {
        return;
    }
    for (double x = plan.geometry.body.right() + depth; x < plan.box.right(); x += 1.6 * depth) {
        drawing.line(x, y + 2, x - depth, y + 2 + depth, ink, 1);
    }
}

/// The cell's words where they fit with some to spare; returns the y below them.
double drawWords(Drawing& drawing, const PlacedCell& placed)
{
    const QRectF& box = placed.box;
    const Style name{Face::strong, 13, drawing.inks().ink};
    const Style word{Face::text, 13, drawing.inks().ink};
    double y = box.top();
    if (box.height() >= 22 && widthOf(placed.cell.name, name) + spareForName <= box.width()) {
        drawing.text(box.left() + 7, y + 16, placed.cell.name, name);
        y += 20;
    }
    const double left = box.bottom() - y;
    if (left >= 19 && !placed.cell.word.isEmpty() && widthOf(placed.cell.word, word) + spareForName <= box.width()) {
        drawing.text(box.left() + 7, y + 14, placed.cell.word, word);
        y += 17;
    }
    return y;
}

void drawMark(Drawing& drawing, const SectionPlan& plan, const PlacedCell& placed, double below)
{
    const QRectF box(QPointF(placed.box.left(), below), placed.box.bottomRight());
    const double side = std::min(box.width(), box.height());
    if (placed.here && plan.show.marks && side >= 12) {
        drawPerson(drawing, box.center(), std::min(0.7 * side, 24.0), 0, drawing.inks().route);
        return;
    }
    const bool speaks = placed.cell.verdict != Verdict::pass && placed.cell.verdict != Verdict::toDo
                     && placed.cell.verdict != Verdict::notApplicable;
    if (plan.show.marks && speaks && side >= 7) {
        drawVerdict(drawing, box.center(), std::min(0.3 * side, 9.0), placed.cell.verdict);
    }
}

void drawCell(Drawing& drawing, const SectionPlan& plan, const PlacedCell& placed)
{
    const Palette& inks = drawing.inks();
    drawing.fill(placed.box, placed.here ? inks.here : tintOf(placed.cell.verdict, inks));
    if (placed.here && inks.hereEdge != inks.here) {
        const double in = 0.5 * hereWall * plan.wall + 1;
        drawing.frame(placed.box.adjusted(in, in, -in, -in), inks.hereEdge, 2);
    }
    drawing.frame(placed.box, inks.ink, placed.here ? hereWall * plan.wall : plan.wall);
    const double below = plan.show.words ? drawWords(drawing, placed) : placed.box.top();
    drawMark(drawing, plan, placed, below);
}

void drawFloorNames(Drawing& drawing, const SectionPlan& plan)
{
    const Style name{Face::strong, 13, drawing.inks().ink};
    const Geometry& g = plan.geometry;
    for (std::size_t i = 0; plan.nameWidth > 0 && i < plan.house.storeys.size(); ++i) {
        const double top = g.body.top() + static_cast<double>(i) * g.storey;
        const QRectF box = whole(QRectF(g.body.left(), top, plan.nameWidth, g.storey));
        drawing.fill(box, drawing.inks().paper);
        drawing.frame(box, drawing.inks().ink, plan.wall);
        drawing.text(box.left() + 7, std::min(box.top() + 16, box.center().y() + 5), plan.house.storeys[i].name, name);
    }
    const auto huts = static_cast<double>(std::max<std::size_t>(plan.house.huts.size(), 1));
    for (std::size_t i = 0; plan.show.words && i < plan.house.huts.size(); ++i) {
        const double left = g.yard.left() + static_cast<double>(i) * g.yard.width() / huts;
        if (widthOf(plan.house.huts[i].name, name) <= g.yard.width() / huts) {
            drawing.text(left, g.yard.top() - 6, plan.house.huts[i].name, name);
        }
    }
}

/// How wide the cells at the left must be that name the floors; 0 where that leaves the rooms too little.
double widthOfNames(const House& house, double width)
{
    double most = 0;
    for (const Storey& storey : house.storeys) {
        most = std::max(most, widthOf(storey.name, {Face::strong, 13}) + spareForName);
    }
    return most <= 0.3 * width ? most : 0;
}

} // namespace

SectionPlan planSection(const QRectF& box, const std::vector<Floor>& floors, const Labels& labels,
                        const SectionShow& show)
{
    SectionPlan plan;
    plan.show = show;
    plan.house = houseOf(floors, labels, show.here ? std::optional(show.here->first) : std::nullopt);
    plan.wall = std::clamp(whole(std::min(box.width() / 45, box.height() / 26)), 1.0, 3.0);
    const double rim = hereWall * plan.wall / 2;
    plan.box = box.adjusted(0, 0, 0, -rim);
    Geometry& g = plan.geometry;
    g = geometryOf(plan.house, plan.box, std::clamp(0.05 * box.width(), 3.0, 16.0));
    g.body = whole(g.body);
    g.earth = whole(g.earth);
    if (floors.empty()) {
        return plan;
    }
    plan.nameWidth = show.words ? widthOfNames(plan.house, g.body.width()) : 0;
    double top = g.body.top();
    for (const Storey& storey : plan.house.storeys) {
        placeRow(plan, storey.cells,
                 QRectF(g.body.left() + plan.nameWidth, top, g.body.width() - plan.nameWidth, g.storey), 0);
        top += g.storey;
    }
    placeHuts(plan, labels);
    return plan;
}

void drawSectionPicture(Drawing& drawing, const SectionPlan& plan)
{
    if (plan.house.storeys.empty() && plan.house.huts.empty()) {
        return;
    }
    drawGround(drawing, plan);
    if (!plan.house.storeys.empty()) {
        drawGable(drawing, plan);
        drawing.fill(plan.geometry.body, drawing.inks().paper);
        drawing.frame(plan.geometry.body, drawing.inks().ink, plan.wall);
    }
    drawFloorNames(drawing, plan);
    for (const PlacedCell& placed : plan.cells) {
        if (!placed.here) {
            drawCell(drawing, plan, placed);
        }
    }
    // Last, so that no neighbour's wall lies over the heavier one.
    for (const PlacedCell& placed : plan.cells) {
        if (placed.here) {
            drawCell(drawing, plan, placed);
        }
    }
}

} // namespace proofwalk::report
