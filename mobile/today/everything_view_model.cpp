#include "everything_view_model.h"

#include "core/catalogue/skill.h"
#include "core/wording/reason_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

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
    if (words.isEmpty() || fromCore(activity.name).contains(words, Qt::CaseInsensitive))
        return true;
    for (const catalogue::ItemUse &use : activity.items) {
        const catalogue::ItemKind *kind = m_household->catalogue().item(use.item);
        if (kind != nullptr && fromCore(kind->name).contains(words, Qt::CaseInsensitive))
            return true;
    }
    return std::any_of(activity.skillsMain.begin(), activity.skillsMain.end(), [&](auto skill) {
        return fromCore(catalogue::skillFamilyWords.of(skill)).contains(words, Qt::CaseInsensitive);
    });
}

void EverythingViewModel::refresh()
{
    m_all.clear();
    const auto today = usecase::suggestToday(m_household->workplace(), m_sitting->request());
    if (today) {
        for (const safety::Admitted &admitted : today->gated.admitted) {
            const catalogue::Minutes &minutes = admitted.activity().minutes;
            m_all.push_back(
                {&admitted.activity(), tr("%1 minutes").arg(minutes.total()), true});
        }
        for (const safety::HeldBack &held : today->gated.heldBack) {
            QStringList sentences;
            for (const safety::Reason &reason : held.reasons) {
                const QString sentence =
                    translated(wording::sentenceFor(reason, m_household->catalogue()));
                if (!sentences.contains(sentence))
                    sentences.append(sentence);
            }
            m_all.push_back({held.activity, sentences.mid(0, 2).join(u' '), false});
        }
    }
    arrange();
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
