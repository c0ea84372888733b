#include "supply_view_model.h"

#include "core/catalogue/own_files.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/typed_number.h"

#include <array>

namespace lidlark::mobile {

namespace {

/// In the order of their chips.
constexpr std::array avoidable{child::Avoided::Latex, child::Avoided::Wheat};

/// Where nothing is written nothing lies there.
int piecesOf(const QString &typed)
{
    return typed.trimmed().isEmpty() ? 0 : wholeFrom(typed, workbench::mostInStock);
}

} // namespace

SupplyViewModel::SupplyViewModel(QObject *parent) : QObject(parent)
{
    connect(&m_offers, &PackOffers::edited, this, &SupplyViewModel::change);
}

void SupplyViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void SupplyViewModel::setItem(const QString &item)
{
    m_item = item;
    load();
}

void SupplyViewModel::load()
{
    if (m_household == nullptr || !m_household->isOpen())
        return;
    auto thing = thingOnShelf(*m_household, {toCore(m_item)});
    m_problem = thing ? QString() : m_household->sentenceFor(thing.error());
    m_thing = thing ? *std::move(thing) : ShelfThing();
    m_facts = m_thing.kind != nullptr ? catalogueFacts(m_household->catalogue(), *m_thing.kind)
                                      : std::vector<CatalogueFact>();
    m_currency = shelfCurrency(*m_household);
    const workbench::KeptSupply &kept = m_thing.kept;
    const int pieces = kept.supply.inStock;
    m_typed = {fromCore(kept.supply.name),
               pieces > 0 ? QString::number(pieces) : QString(),
               fromCore(kept.lot),
               fromCore(kept.note),
               kept.supply.usedUp,
               {},
               {}};
    for (const child::Avoided what : avoidable)
        m_typed.freeOf.append(kept.freeOf.contains(what));
    m_offers.show(kept.supply.offers);
    m_kept = now();
    emit loaded();
    emit edited();
}

SupplyViewModel::Typed SupplyViewModel::now() const
{
    Typed typed = m_typed;
    typed.offers = m_offers.typed();
    return typed;
}

void SupplyViewModel::change()
{
    m_problem.clear();
    emit edited();
}

QString SupplyViewModel::name() const
{
    return isNew() ? tr("A new thing") : shelfName(m_thing);
}

QString SupplyViewModel::kind() const
{
    return m_thing.kind != nullptr ? fromCore(m_thing.kind->id.value) : QString();
}

bool SupplyViewModel::isOwn() const
{
    return m_thing.kind != nullptr && catalogue::isOwnId(m_thing.kind->id.value);
}

QString SupplyViewModel::cautions() const
{
    return m_thing.kind != nullptr ? cautionsInShort(*m_thing.kind) : QString();
}

QStringList SupplyViewModel::factLabels() const
{
    QStringList labels;
    for (const CatalogueFact &fact : m_facts)
        labels.append(fact.label);
    return labels;
}

QStringList SupplyViewModel::factWords() const
{
    QStringList words;
    for (const CatalogueFact &fact : m_facts)
        words.append(fact.words);
    return words;
}

QString SupplyViewModel::currency() const
{
    return fromCore(m_currency);
}

void SupplyViewModel::setOwnName(const QString &name)
{
    m_typed.name = name;
    m_nameProblem.clear();
    change();
}

void SupplyViewModel::setStock(const QString &stock)
{
    m_typed.stock = stock;
    m_stockProblem.clear();
    change();
}

void SupplyViewModel::setLot(const QString &lot)
{
    m_typed.lot = lot;
    change();
}

void SupplyViewModel::setNote(const QString &note)
{
    m_typed.note = note;
    change();
}

void SupplyViewModel::setUsedUp(bool usedUp)
{
    m_typed.usedUp = usedUp;
    change();
}

QStringList SupplyViewModel::freeOfWords()
{
    return {tr("Free of latex"), tr("Free of wheat")};
}

void SupplyViewModel::turnFreeOf(int which)
{
    if (which < 0 || which >= m_typed.freeOf.size())
        return;
    m_typed.freeOf[which] = !m_typed.freeOf[which];
    change();
}

bool SupplyViewModel::changed() const
{
    return now() != m_kept;
}

QString SupplyViewModel::keptLot() const
{
    return fromCore(m_thing.kept.lot);
}

bool SupplyViewModel::looksRight()
{
    const bool named = inCatalogue() || !m_typed.name.trimmed().isEmpty();
    m_nameProblem = named ? QString() : tr("Name: say what it is called.");
    const bool counted = piecesOf(m_typed.stock) >= 0;
    m_stockProblem =
        counted ? QString()
                : numerals(
                      tr("On the shelf: a whole number from 0 to %1.").arg(workbench::mostInStock));
    return named && counted;
}

workbench::KeptSupply SupplyViewModel::asTyped(std::vector<workbench::PackOffer> offers) const
{
    workbench::KeptSupply kept = m_thing.kept;
    kept.supply.name = toCore(m_typed.name);
    kept.supply.inStock = piecesOf(m_typed.stock);
    kept.supply.usedUp = m_typed.usedUp;
    kept.supply.offers = std::move(offers);
    kept.lot = toCore(m_typed.lot);
    kept.note = toCore(m_typed.note);
    for (std::size_t i = 0; i < avoidable.size(); ++i) {
        kept.freeOf.erase(avoidable[i]);
        if (!inCatalogue() && m_typed.freeOf.value(static_cast<qsizetype>(i)))
            kept.freeOf.insert(avoidable[i]);
    }
    return kept;
}

bool SupplyViewModel::keep()
{
    if (m_household == nullptr || !m_household->isOpen())
        return false;
    const bool right = looksRight();
    auto offers = m_offers.read(m_currency);
    m_problem = right && offers
                    ? QString()
                    : tr("Nothing is kept yet. Put right what is marked, then keep it.");
    if (m_problem.isEmpty()) {
        const Outcome kept = keepOnShelf(*m_household, asTyped(*std::move(offers)));
        m_problem = kept ? QString() : m_household->sentenceFor(kept.error());
    }
    if (m_problem.isEmpty())
        m_kept = now();
    emit edited();
    return m_problem.isEmpty();
}

} // namespace lidlark::mobile
