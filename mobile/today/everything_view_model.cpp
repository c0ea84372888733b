#include "everything_view_model.h"

#include <QCollator>

#include "core/catalogue/translation.h"
#include "core/wording/caution_words.h"
#include "core/wording/reason_words.h"
#include "core/wording/skill_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// By the name that is shown, or by the English one: another adult of the home may know only that.
template <class Entry> bool isCalled(const Entry &entry, const QString &words)
{
    return fromCore(entry.name).contains(words, Qt::CaseInsensitive) ||
           fromCore(catalogue::inEnglish(entry).name).contains(words, Qt::CaseInsensitive);
}

} // namespace

int EverythingViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant EverythingViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ActivityIdRole:
        return fromCore(row.activity->id.value);
    case NameRole:
        return fromCore(row.activity->name);
    case NoteRole:
        return row.note;
    case DrawingRole:
        return fromCore(row.activity->picture.drawing);
    case AllowedRole:
        return row.allowed;
    default:
        return {};
    }
}

QHash<int, QByteArray> EverythingViewModel::roleNames() const
{
    return {{ActivityIdRole, "activityId"},
            {NameRole, "name"},
            {NoteRole, "note"},
            {DrawingRole, "drawing"},
            {AllowedRole, "allowed"}};
}

void EverythingViewModel::setSearched(const QString &text)
{
    if (text == m_searched)
        return;
    m_searched = text;
    arrange();
}

bool EverythingViewModel::matches(const catalogue::Activity &activity) const
{
    const QString words = m_searched.trimmed();
    if (words.isEmpty() || isCalled(activity, words))
        return true;
    for (const catalogue::ItemUse &use : activity.items) {
        const catalogue::ItemKind *kind = m_household->catalogue().item(use.item);
        if (kind != nullptr && isCalled(*kind, words))
            return true;
    }
    return std::any_of(activity.skillsMain.begin(), activity.skillsMain.end(), [&](auto skill) {
        const wording::Sentence name = wording::skillWords(skill);
        return fromCore(wording::fill(name)).contains(words, Qt::CaseInsensitive) ||
               translated(name).contains(words, Qt::CaseInsensitive);
    });
}

void EverythingViewModel::refresh()
{
    m_all.clear();
    m_gated = {};
    auto today = m_sitting->menu();
    m_problem = today ? QString() : m_household->sentenceFor(today.error());
    if (today)
        m_gated = std::move(today->gated);
    for (const safety::Admitted &admitted : m_gated.admitted) {
        const QString minutes =
            numerals(tr("%n minute(s)", "", admitted.activity().minutes.total()));
        const QString who = safetyText(wording::supervisionShort(admitted.supervision()));
        m_all.push_back({&admitted.activity(), tr("%1. %2").arg(minutes, who), true});
    }
    for (const safety::HeldBack &held : m_gated.heldBack)
        m_all.push_back({held.activity, reasonsOf(held), false});
    const QCollator alphabet{QLocale()}; // "Ł" stands after "L", not after "Z"
    std::stable_sort(m_all.begin(), m_all.end(), [&](const Row &left, const Row &right) {
        if (left.allowed != right.allowed)
            return left.allowed;
        return alphabet.compare(fromCore(left.activity->name), fromCore(right.activity->name)) < 0;
    });
    arrange();
}

QString EverythingViewModel::reasonsOf(const safety::HeldBack &held) const
{
    std::vector<wording::Sentence> sentences;
    for (const safety::Reason &reason : held.reasons) {
        wording::Sentence sentence = wording::sentenceFor(reason, m_household->catalogue());
        if (std::ranges::find(sentences, sentence) == sentences.end())
            sentences.push_back(std::move(sentence));
    }
    return safetyText(sentences);
}

int EverythingViewModel::countAllowed() const
{
    return static_cast<int>(
        std::count_if(m_rows.begin(), m_rows.end(), [](const Row &row) { return row.allowed; }));
}

bool EverythingViewModel::begin(const QString &activityId)
{
    const auto found = std::find_if(m_gated.admitted.begin(), m_gated.admitted.end(),
                                    [&](const safety::Admitted &admitted) {
                                        return fromCore(admitted.activity().id.value) == activityId;
                                    });
    return found != m_gated.admitted.end() && m_playInHand->begin(*found);
}

void EverythingViewModel::arrange()
{
    beginResetModel();
    m_rows.clear();
    for (const Row &row : m_all) {
        if (matches(*row.activity))
            m_rows.push_back(row);
    }
    endResetModel();
    emit refreshed();
}

} // namespace lidlark::mobile
