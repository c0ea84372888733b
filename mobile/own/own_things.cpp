#include "own_things.h"

#include "core/catalogue/item_tags.h"
#include "core/wording/tag_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int mostPieces = 12; ///< Of what a box has none of by itself.

catalogue::Fate fateOf(const catalogue::ItemKind &kind)
{
    switch (kind.comesBack) {
    case catalogue::ComesBack::PartUsed:
        return catalogue::Fate::PartUsed;
    case catalogue::ComesBack::UsedUp:
        return catalogue::Fate::UsedUp;
    default:
        return catalogue::Fate::ComesBack;
    }
}

} // namespace

void OwnThings::show(Household *household, std::vector<catalogue::ItemUse> uses)
{
    m_household = household;
    renewRows([&] { m_uses = std::move(uses); });
}

int OwnThings::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_uses.size());
}

QVariant OwnThings::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const catalogue::ItemUse &use = m_uses[static_cast<std::size_t>(index.row())];
    const QString id = fromCore(use.item.value);
    const catalogue::ItemKind *kind = kindOf(use.item);
    switch (role) {
    case ItemIdRole:
        return id;
    case NameRole:
        return nameOf(id);
    case DrawingRole:
        return drawingOf(id);
    case PiecesRole:
        return use.quantity;
    case MostRole:
        return kind != nullptr && kind->lidCount > 0 ? kind->lidCount : mostPieces;
    case NoteRole:
        return noteOf(id);
    case SpareRole:
        return use.role == catalogue::Role::Nice;
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnThings::roleNames() const
{
    return {{ItemIdRole, "itemId"}, {NameRole, "name"}, {DrawingRole, "drawing"},
            {PiecesRole, "pieces"}, {MostRole, "most"}, {NoteRole, "note"},
            {SpareRole, "spare"}};
}

QStringList OwnThings::rowKeys() const
{
    QStringList keys;
    for (const catalogue::ItemUse &use : m_uses)
        keys.append(fromCore(use.item.value));
    return keys;
}

const catalogue::ItemKind *OwnThings::kindOf(const ItemId &item) const
{
    return m_household != nullptr ? m_household->catalogue().item(item) : nullptr;
}

QStringList OwnThings::others(const QString &words) const
{
    QStringList ids;
    if (m_household == nullptr)
        return ids;
    for (const catalogue::ItemKind &kind : m_household->catalogue().items()) {
        const bool used =
            std::ranges::find(m_uses, kind.id, &catalogue::ItemUse::item) != m_uses.end();
        if (!used && fromCore(kind.name).contains(words.trimmed(), Qt::CaseInsensitive))
            ids.append(fromCore(kind.id.value));
    }
    return ids;
}

QString OwnThings::nameOf(const QString &itemId) const
{
    const catalogue::ItemKind *kind = kindOf({toCore(itemId)});
    return kind != nullptr ? capitalised(fromCore(kind->name)) : itemId;
}

QString OwnThings::drawingOf(const QString &itemId) const
{
    const catalogue::ItemKind *kind = kindOf({toCore(itemId)});
    return kind != nullptr ? fromCore(kind->drawing) : QStringLiteral("item-box");
}

QString OwnThings::noteOf(const QString &itemId) const
{
    const catalogue::ItemKind *kind = kindOf({toCore(itemId)});
    QStringList words;
    if (kind != nullptr) {
        for (const catalogue::Tag tag : catalogue::tagsBroughtBy(*kind).list())
            words.append(translated({wording::tagShort(tag), {}}));
    }
    return words.join(QStringLiteral(", "));
}

/// All of it is counted home but what is used up.
void OwnThings::count(catalogue::ItemUse &use, int pieces) const
{
    use.quantity = pieces;
    use.countBack =
        use.fate == catalogue::Fate::UsedUp || use.source == catalogue::Source::Home ? 0 : pieces;
}

void OwnThings::add(const QString &itemId)
{
    const catalogue::ItemKind *kind = kindOf({toCore(itemId)});
    if (kind == nullptr || rowCount() >= catalogue::itemLimit)
        return;
    renewRows([&] {
        catalogue::ItemUse use;
        use.item = kind->id;
        use.source = kind->source;
        use.fate =
            kind->source == catalogue::Source::Box ? fateOf(*kind) : catalogue::Fate::ComesBack;
        count(use, 1);
        m_uses.push_back(use);
    });
    emit edited();
}

void OwnThings::takeOut(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    renewRows([&] { m_uses.erase(m_uses.begin() + row); });
    emit edited();
}

void OwnThings::setPieces(int row, int pieces)
{
    if (row < 0 || row >= rowCount())
        return;
    renewRows([&] { count(m_uses[static_cast<std::size_t>(row)], pieces); });
    emit edited();
}

void OwnThings::spare(int row, bool spare)
{
    if (row < 0 || row >= rowCount())
        return;
    renewRows([&] {
        m_uses[static_cast<std::size_t>(row)].role =
            spare ? catalogue::Role::Nice : catalogue::Role::Must;
    });
    emit edited();
}

} // namespace lidlark::mobile
