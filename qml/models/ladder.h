// SPDX-License-Identifier: GPL-3.0-or-later
// The stair to the signature: seven treads, the highest first, each with what is missing and the way to its place.
#pragma once

#include "qml/models/rows.h"
#include "qml/models/rungs.h"

#include <QString>

namespace proofwalk::models {

struct TreadRow {
    Q_GADGET
    Q_PROPERTY(int tread MEMBER tread)         ///< Tread
    Q_PROPERTY(QString title MEMBER title)     ///< "23 devices to walk"
    Q_PROPERTY(QString second MEMBER second)   ///< "cellar 15, yard 8"
    Q_PROPERTY(QString link MEMBER link)       ///< "go to Walk"
    Q_PROPERTY(int treadState MEMBER treadState) ///< 0 done, 1 here, 2 ahead
    Q_PROPERTY(int depth MEMBER depth)         ///< treads below it
    Q_PROPERTY(int rungs MEMBER rungs)         ///< sentences in its list

public:
    QString title, second, link;
    int tread = 0, treadState = 2, depth = 0, rungs = 0;
    friend bool operator==(const TreadRow&, const TreadRow&) = default;
};

class Ladder : public PROOFWALK_ROWS(TreadRow) {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int climbed READ climbed NOTIFY changed)             ///< treads done below the signature
    Q_PROPERTY(QString climbedWords READ climbedWords NOTIFY changed) ///< "2 of 6 climbed"
    Q_PROPERTY(int missing READ missing NOTIFY changed)             ///< rungs that block
    Q_PROPERTY(QString missingWords READ missingWords NOTIFY changed) ///< "3 things still to do"; empty if none
    Q_PROPERTY(QString standingWords READ standingWords NOTIFY changed)
    Q_PROPERTY(int hereTread READ hereTread NOTIFY changed)         ///< Tread in hand

public:
    enum State { Done, Here, Ahead };
    Q_ENUM(State)

    explicit Ladder(QObject* parent = nullptr);
    int climbed() const { return m_climbed; }
    QString climbedWords() const { return m_climbedWords; }
    int missing() const { return m_missing; }
    QString missingWords() const { return m_missingWords; }
    QString standingWords() const { return m_standingWords; }
    int hereTread() const { return m_here; }

    /// To the place where a tread is climbed.
    Q_INVOKABLE void go(int tread) const;

Q_SIGNALS:
    void changed();

private:
    void refresh();

    int m_climbed = 0, m_missing = 0, m_here = tread::Arrival;
    QString m_climbedWords, m_missingWords, m_standingWords;
};

} // namespace proofwalk::models
