#include "notebook_view_model.h"

#include "core/wording/box_words.h"
#include "core/wording/day_words.h"
#include "core/wording/line_words.h"
#include "core/wording/play_words.h"
#include "mobile/bridge/goal_errands.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/small_drawing.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <tuple>

namespace lidlark::mobile {

void NotebookViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &NotebookViewModel::load);
    load();
}

void NotebookViewModel::load()
{
    beginResetModel();
    auto family = m_household->family();
    m_family.reset();
    if (family)
        m_family = *std::move(family);
    m_notes = m_household->boxNotes();
    const auto goals = m_family ? goalsOf(*m_household) : Result(std::vector<goals::GoalRecord>());
    m_knowsGoals = goals && !goals->empty();
    m_entries.clear();
    if (m_family) {
        for (const play::Play &play : m_family->plays)
            m_entries.push_back({play.when, play.startedAt.ms, &play, nullptr});
        for (const usecase::BoxNote &note : m_notes)
            m_entries.push_back({note.when, note.at.ms, nullptr, &note});
    }
    std::stable_sort(m_entries.begin(), m_entries.end(), [](const Entry &a, const Entry &b) {
        return std::tie(b.when.day, b.ms) < std::tie(a.when.day, a.ms);
    });
    endResetModel();
    emit loaded();
}

int NotebookViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_entries.size());
}

QString NotebookViewModel::headingOf(int row) const
{
    const auto headingAt = [this](int at) {
        const Entry &entry = m_entries[static_cast<std::size_t>(at)];
        return translated(wording::dayHeading(entry.when, m_household->today()));
    };
    const QString heading = headingAt(row);
    return row > 0 && headingAt(row - 1) == heading ? QString() : heading;
}

QString NotebookViewModel::noteOf(const play::Play &play) const
{
    std::vector<wording::Argument> parts{play.author};
    bool named = false;
    for (const store::OutcomeRow &outcome : m_family->outcomes) {
        if (outcome.play != play.id)
            continue;
        const wording::PieceNames item = namesOf(outcome.item);
        for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
            const int pieces = outcome.exceptions.counts[i];
            if (pieces == 0)
                continue;
            const auto kind = static_cast<box::ExceptionKind>(i);
            parts.push_back(wording::withCapital(wording::piecesGone(pieces, item, kind)));
            named = true;
        }
    }
    if (play.ending == play::Ending::Stopped)
        parts.emplace_back(wording::stoppedEarly());
    if (!named && play.ending)
        parts.emplace_back(wording::allBack());
    return translated(wording::asSentence(std::move(parts)));
}

wording::PieceNames NotebookViewModel::namesOf(const ItemId &item) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(item);
    return kind != nullptr ? wording::PieceNames{kind->one, kind->name}
                           : wording::PieceNames{item.value, item.value};
}

QVariant NotebookViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    if (role == HeadingRole)
        return headingOf(index.row());
    const Entry &entry = m_entries[static_cast<std::size_t>(index.row())];
    return entry.play != nullptr ? dataOf(*entry.play, role) : dataOf(*entry.note, role);
}

QVariant NotebookViewModel::dataOf(const play::Play &play, int role) const
{
    const catalogue::Activity *activity = m_household->catalogue().activity(play.activity);
    switch (role) {
    case NameRole:
        return fromCore(activity != nullptr ? activity->name : play.activity.value);
    case DrawingRole:
        return activity != nullptr ? smallDrawingOf(*activity, m_household->catalogue())
                                   : QString();
    case NoticedRole: {
        std::vector<wording::Argument> phrases;
        phrases.reserve(play.phrases.size());
        for (const play::Phrase phrase : play.phrases)
            phrases.emplace_back(wording::phraseWords(phrase));
        return translated(wording::inOneLine(std::move(phrases)));
    }
    case NoteRole:
        return noteOf(play);
    default:
        return {};
    }
}

QVariant NotebookViewModel::dataOf(const usecase::BoxNote &note, int role) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(note.item);
    switch (role) {
    case NameRole:
        return note.act == box::Act::Gone
                   ? capitalised(translated(wording::exceptionWord(note.kind)))
                   : translated(wording::boxActWords(note.act));
    case DrawingRole:
        if (note.item.empty())
            return QStringLiteral("item-box");
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case NoteRole: {
        const wording::PieceNames item = namesOf(note.item);
        if (note.item.empty())
            return translated(wording::asSentence({note.author, wording::wholeBox()}));
        if (note.pieces == 0)
            return translated(wording::asSentence({note.author, wording::withCapital(item.many)}));
        return translated(wording::asSentence(
            {note.author, wording::withCapital(wording::piecesOf(note.pieces, item))}));
    }
    case NoticedRole:
        return QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> NotebookViewModel::roleNames() const
{
    return {{HeadingRole, "heading"},
            {NameRole, "name"},
            {DrawingRole, "drawing"},
            {NoticedRole, "noticed"},
            {NoteRole, "note"}};
}

const child::Goal *NotebookViewModel::firstGoal() const
{
    return m_family && !m_family->child.goals.empty() ? &m_family->child.goals.front() : nullptr;
}

QString NotebookViewModel::goal() const
{
    return firstGoal() != nullptr ? fromCore(firstGoal()->words) : QString();
}

QString NotebookViewModel::goalNow() const
{
    const child::Goal *goal = firstGoal();
    return goal != nullptr ? fromCore(child::levelOf(*goal, goal->now)) : QString();
}

QString NotebookViewModel::goalNext() const
{
    const child::Goal *goal = firstGoal();
    if (goal == nullptr)
        return {};
    return fromCore(child::levelOf(*goal, std::min(goal->now + 1, 2)));
}

QString NotebookViewModel::goalDates() const
{
    const child::Goal *goal = firstGoal();
    if (goal == nullptr)
        return {};
    return tr("Agreed %1. We look again %2.")
        .arg(translated(wording::dateWords(goal->agreedOn)),
             translated(wording::dateWords(goal->reviewOn)));
}

} // namespace lidlark::mobile
