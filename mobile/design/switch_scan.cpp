#include "switch_scan.h"

#include "scroll_to.h"

#include <QtQuick/QQuickWindow>

#include <algorithm>

namespace lidlark::design {
namespace {

constexpr int pauseMs = 600; // checkin.md 10
constexpr qreal ringOutset = 6.0;

bool says(const QQuickItem *item, const char *property)
{
    return item->property(property).toBool();
}

/// The entry that holds the first living control of @p lit; the first of all when none does.
std::size_t placeOf(const ScanEntry &lit, const std::vector<ScanEntry> &entries)
{
    const auto has = [&lit](const ScanEntry &entry) {
        return std::ranges::find_first_of(entry.stops, lit.stops) != entry.stops.end();
    };
    const auto found = std::ranges::find_if(entries, has);
    return found == entries.end() ? 0 : static_cast<std::size_t>(found - entries.begin());
}

} // namespace

SwitchScan::SwitchScan(QQuickItem *parent) : QQuickItem(parent)
{
    m_step.setSingleShot(true);
    m_pause.setSingleShot(true);
    m_pause.setInterval(pauseMs);
    connect(&m_step, &QTimer::timeout, this, &SwitchScan::goOn);
}

SwitchScan::~SwitchScan()
{
    if (m_watched)
        m_watched->removeEventFilter(this);
}

void SwitchScan::setRoot(QQuickItem *root)
{
    if (m_root == root)
        return;
    m_root = root;
    emit rootChanged();
    restart();
}

void SwitchScan::setSwitches(int switches)
{
    if (m_switches == switches)
        return;
    m_switches = switches;
    emit switchesChanged();
    restart();
}

bool SwitchScan::leaving() const
{
    return !m_rounds.empty() && m_rounds.back().at == m_rounds.back().entries.size();
}

void SwitchScan::restart()
{
    m_rounds.clear();
    if (m_switches > 0 && m_root)
        m_rounds.push_back({scanEntries(m_root), 0, false});
    show();
}

void SwitchScan::rest()
{
    m_rounds.clear();
    show();
}

/// Controls may have come and gone since the round began; the light stays where it is.
void SwitchScan::renewFirstRound()
{
    Round &first = m_rounds.front();
    std::vector<ScanEntry> now = scanEntries(m_root);
    first.at = first.at < first.entries.size() ? placeOf(first.entries[first.at], now) : 0;
    first.entries = std::move(now);
}

void SwitchScan::goOn()
{
    while (m_rounds.size() > 1 && std::ranges::none_of(m_rounds.back().entries, &ScanEntry::alive))
        m_rounds.pop_back();
    if (m_rounds.empty()) {
        restart();
        return;
    }
    Round &round = m_rounds.back();
    const bool inside = m_rounds.size() > 1;
    if (!inside)
        renewFirstRound();
    const std::size_t places = round.entries.size() + (inside ? 1 : 0);
    if (places == 0) {
        restart();
        return;
    }
    do
        round.at = (round.at + 1) % places;
    while (round.at < round.entries.size() && !round.entries[round.at].alive());
    show();
}

void SwitchScan::press()
{
    if (m_rounds.empty() || m_rounds.back().entries.empty()) {
        restart();
        return;
    }
    if (leaving()) {
        m_rounds.pop_back();
        show();
        return;
    }
    const Round &round = m_rounds.back();
    const ScanEntry entry = round.entries[round.at];
    if (!entry.alive())
        restart();
    else if (entry.isGroup() || (says(entry.stops.front(), "pressedTwice") && !round.armed))
        open(entry);
    else
        answer(entry.stops.front());
}

void SwitchScan::open(const ScanEntry &entry)
{
    if (entry.isGroup())
        m_rounds.push_back({openedGroup(entry), 0, false});
    else
        m_rounds.push_back({{entry}, 0, true});
    show();
}

void SwitchScan::answer(QQuickItem *stop)
{
    const QPointer<QQuickItem> pressed = stop;
    m_pause.start();
    if (says(stop, "writes"))
        emit writingWanted(stop);
    else
        QMetaObject::invokeMethod(stop, "press");
    const bool stays = pressed && pressed == m_lit && pressed->isVisible() && pressed->isEnabled();
    if (stays && says(pressed, "restsAfter"))
        rest();
    else if (stays && says(pressed, "pressedOften"))
        show();
    else
        restart();
}

void SwitchScan::show()
{
    const Round *round = m_rounds.empty() ? nullptr : &m_rounds.back();
    const bool one = round != nullptr && round->at < round->entries.size() &&
                     !round->entries[round->at].isGroup();
    light(one ? round->entries[round->at].stops.front().data() : nullptr, one && round->armed);
    m_step.stop();
    if (m_switches == 1 && round != nullptr && !m_down)
        m_step.start(m_stepMs);
    polish();
    emit litChanged();
}

void SwitchScan::light(QQuickItem *stop, bool armed)
{
    if (m_lit && m_lit != stop) {
        m_lit->setProperty("lit", false);
        m_lit->setProperty("armed", false);
    }
    m_lit = stop;
    if (stop == nullptr)
        return;
    stop->setProperty("lit", true);
    if (says(stop, "pressedTwice"))
        stop->setProperty("armed", armed);
}

void SwitchScan::updatePolish()
{
    if (m_rounds.empty())
        return placeRing();
    const Round &round = m_rounds.back();
    if (round.at < round.entries.size() && round.entries[round.at].alive())
        scrollTo(round.entries[round.at].stops);
    placeRing();
}

void SwitchScan::placeRing()
{
    QRectF around;
    if (!m_rounds.empty() && m_lit == nullptr) {
        const Round &round = m_rounds.back();
        for (std::size_t i = 0; i < round.entries.size(); ++i) {
            if (leaving() || i == round.at)
                around |= shownPart(round.entries[i].stops);
        }
        around.adjust(-ringOutset, -ringOutset, ringOutset, ringOutset);
        around &= mapRectToScene(boundingRect());
    }
    const QRectF ring = around.isEmpty() ? QRectF() : mapRectFromScene(around);
    if (ring == m_ring)
        return;
    m_ring = ring;
    emit ringChanged();
}

void SwitchScan::itemChange(ItemChange change, const ItemChangeData &data)
{
    if (change == ItemSceneChange) {
        if (m_watched) {
            m_watched->removeEventFilter(this);
            disconnect(m_watched, nullptr, this, nullptr);
        }
        m_watched = data.window;
        if (m_watched) {
            m_watched->installEventFilter(this);
            // The page may move under the ring: it arrives, it is scrolled, it is laid out anew.
            connect(m_watched, &QQuickWindow::afterAnimating, this, &SwitchScan::placeRing);
        }
    }
    QQuickItem::itemChange(change, data);
}

} // namespace lidlark::design
