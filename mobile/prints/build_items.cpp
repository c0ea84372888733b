#include "build_items.h"

#include "core/wording/pack_list_words.h"
#include "core/wording/print_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"

#include <utility>

namespace lidlark::mobile {

using workbench::Hand;

BuildItems::BuildItems(PrintLanguage in, std::map<ItemId, std::string> names)
    : m_in(std::move(in)), m_names(std::move(names))
{
}

std::string BuildItems::nameOf(const ItemId &item, int pieces) const
{
    if (const auto *kind = m_in.catalogue().item(workbench::kindOf(item)))
        return pieces == 1 ? kind->one : kind->name;
    const auto kept = m_names.find(item);
    return kept != m_names.end() ? kept->second : item.value;
}

wording::Argument BuildItems::named(const ItemId &item) const
{
    const Hand made = workbench::handOf(item);
    if (made == Hand::Unsaid)
        return {nameOf(item)};
    return {wording::inList({nameOf(item), wording::forHand(made)})};
}

QString BuildItems::title(const ItemId &item, int pieces, Hand hand) const
{
    const QString name = capitalised(fromCore(nameOf(item, pieces)));
    const Hand made = hand == Hand::Unsaid ? workbench::handOf(item) : hand;
    if (made == Hand::Unsaid)
        return name;
    return m_in.tell(wording::inList({toCore(name), wording::forHand(made)}));
}

QString BuildItems::drawingOf(const ItemId &item) const
{
    const QString drawing = m_in.drawingOf(workbench::kindOf(item));
    return drawing.isEmpty() ? QStringLiteral("item-box") : drawing;
}

} // namespace lidlark::mobile
