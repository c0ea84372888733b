#include "print_language.h"

#include <QLocale>

#include "core/wording/catalogue_terms.h"
#include "core/wording/money_words.h"
#include "core/wording/print_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

PrintLanguage::PrintLanguage(const QString &code, const catalogue::Catalogue &catalogue)
    : m_tongue(std::make_shared<const WrittenLanguage>(code)), m_catalogue(&catalogue)
{
}

bool PrintLanguage::countsOtherwiseThan(const PrintLanguage &other) const
{
    return number(0) != other.number(0);
}

QString PrintLanguage::tell(const wording::Sentence &sentence) const
{
    return m_tongue->tell(sentence);
}

QString PrintLanguage::number(std::int64_t value) const
{
    return numerals(QString::number(value), m_tongue->language().code);
}

QString PrintLanguage::money(std::int64_t pence, const std::string &currency) const
{
    const QString &code = m_tongue->language().code;
    return numerals(fromCore(wording::moneyText(pence, currency)), code)
        .replace(u'.', QLocale(code).decimalPoint());
}

wording::Argument PrintLanguage::nameOf(const ItemId &item, int pieces) const
{
    const catalogue::ItemKind *kind = m_catalogue->item(item);
    if (kind == nullptr)
        return {item.value};
    return pieces == 1 ? wording::oneOf(*kind) : wording::nameOf(*kind);
}

QString PrintLanguage::title(const ItemId &item, int pieces) const
{
    return tell(wording::inList({wording::withCapital(nameOf(item, pieces))}));
}

QString PrintLanguage::drawingOf(const ItemId &item) const
{
    const catalogue::ItemKind *kind = m_catalogue->item(item);
    return kind != nullptr ? fromCore(kind->drawing) : QString();
}

} // namespace lidlark::mobile
