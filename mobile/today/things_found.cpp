#include "things_found.h"

#include "core/wording/count_words.h"
#include "core/wording/reason_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

int ThingsFound::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant ThingsFound::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::ItemStanding &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(row.kind->id.value);
    case NameRole:
        return fromCore(wording::capital(row.kind->name));
    case NoteRole:
        return noteOf(row);
    case DrawingRole:
        return fromCore(row.kind->drawing);
    case InBoxRole:
        return row.place == usecase::ItemPlace::InBox;
    default:
        return {};
    }
}

QHash<int, QByteArray> ThingsFound::roleNames() const
{
    return {{ItemIdRole, "itemId"},
            {NameRole, "name"},
            {NoteRole, "note"},
            {DrawingRole, "drawing"},
            {InBoxRole, "inBox"}};
}

void ThingsFound::setSearched(const QString &text)
{
    if (text == m_searched)
        return;
    m_searched = text;
    arrange();
}

void ThingsFound::refresh()
{
    m_all.clear();
    if (const auto today = m_sitting->menu())
        m_all = m_household->itemsAround(*today);
    arrange();
}

QString ThingsFound::noteOf(const usecase::ItemStanding &standing) const
{
    QStringList sentences;
    switch (standing.place) {
    case usecase::ItemPlace::InBox:
        sentences.append(
            standing.high == 0
                ? tr("None left in the box.")
                : tr("In the box: %1.")
                      .arg(translated(wording::rangeWords(standing.low, standing.high))));
        break;
    case usecase::ItemPlace::NotInBox:
        sentences.append(tr("Not in this box."));
        break;
    case usecase::ItemPlace::AtHome:
        sentences.append(tr("From the house, not from the box."));
        break;
    case usecase::ItemPlace::NotAtHome:
        sentences.append(tr("From the house, and this home has none."));
        break;
    }
    for (const safety::Reason &reason : standing.heldBack) {
        const QString sentence = translated(wording::sentenceFor(reason, m_household->catalogue()));
        if (!sentences.contains(sentence))
            sentences.append(sentence);
    }
    return sentences.join(u' ');
}

void ThingsFound::arrange()
{
    const QString words = m_searched.trimmed();
    beginResetModel();
    m_rows.clear();
    for (const usecase::ItemStanding &standing : m_all) {
        if (!words.isEmpty() && fromCore(standing.kind->name).contains(words, Qt::CaseInsensitive))
            m_rows.push_back(standing);
    }
    endResetModel();
    emit refreshed();
}

} // namespace lidlark::mobile
