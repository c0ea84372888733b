#include "sheet_view_model.h"

#include "core/wording/build_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

using workbench::BuildFault;
using workbench::SheetLine;

void SheetViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &SheetViewModel::load);
    load();
}

QString SheetViewModel::build() const
{
    return fromCore(m_build.value);
}

void SheetViewModel::setBuild(const QString &build)
{
    m_build = {toCore(build)};
    load();
}

void SheetViewModel::load()
{
    if (m_household == nullptr || m_build.empty())
        return;
    renewRows([this] { readRows(); });
    emit loaded();
}

void SheetViewModel::readRows()
{
    m_names = boughtNames(*m_household);
    m_designs = designsOn(*m_household);
    m_lines.clear();
    m_groups.clear();
    const auto made = usecase::buildSheetOf(m_household->workplace(), m_build);
    if (!made) {
        m_problem = m_household->sentenceFor(made.error());
        return;
    }
    m_sheet = *made;
    if (const workbench::Sheet *reckoned = sheet()) {
        for (std::size_t i = 0; i < reckoned->lines.size(); ++i) {
            const workbench::Need &need = reckoned->lines[i].need;
            if (need.pieces > 0 || need.back > 0)
                m_lines.push_back(i);
        }
        groupBoxes();
    }
}

const workbench::Sheet *SheetViewModel::sheet() const
{
    return std::get_if<workbench::Sheet>(&m_sheet.sheet);
}

const workbench::BuildProblems *SheetViewModel::faults() const
{
    return std::get_if<workbench::BuildProblems>(&m_sheet.sheet);
}

QStringList SheetViewModel::rowKeys() const
{
    QStringList keys;
    for (const std::size_t line : m_lines)
        keys.append(fromCore(sheet()->lines[line].item.value));
    return keys;
}

int SheetViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant SheetViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const std::size_t at = m_lines[static_cast<std::size_t>(index.row())];
    const SheetLine &line = sheet()->lines[at];
    switch (role) {
    case ItemIdRole:
        return fromCore(line.item.value);
    case NameRole:
        return boughtName(m_names, line.item);
    case DrawingRole:
        return clinicDrawing(*m_household, line.item);
    case NeedRole:
        return needWords(line);
    case BuyRole:
        return buyWords(line, m_sheet.supplies[at]);
    case LeftRole:
        return tr("On the shelf afterwards: %1.").arg(numerals(static_cast<int>(line.leftover)));
    default:
        return {};
    }
}

QHash<int, QByteArray> SheetViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},  {NameRole, "name"},    {DrawingRole, "drawing"},
            {NeedRole, "needWords"}, {BuyRole, "buyWords"}, {LeftRole, "leftWords"}};
}

QString SheetViewModel::needWords(const SheetLine &line) const
{
    if (line.need.back > 0)
        return tr("Set aside, and not needed any more: %1. It goes back on the shelf.")
            .arg(numerals(static_cast<int>(line.need.back)));
    return tr("Still needed: %1. Spares: %2. On the shelf: %3.")
        .arg(numerals(static_cast<int>(line.need.pieces)),
             numerals(static_cast<int>(line.need.spares)),
             numerals(static_cast<int>(line.inStock)));
}

QString SheetViewModel::buyWords(const SheetLine &line, const workbench::Supply &supply) const
{
    QStringList words;
    for (std::size_t i = 0; i < line.packs.size(); ++i) {
        if (line.packs[i] == 0)
            continue;
        const workbench::PackOffer &offer = supply.offers[i];
        const QString packs =
            tr("packs of %1, to buy: %2, %3")
                .arg(numerals(offer.pieces), numerals(line.packs[i]),
                     moneyWords(offer.pence.value_or(0) * line.packs[i], m_sheet.build.currency));
        words.append(offer.shop.empty() ? packs : tr("%1: %2").arg(fromCore(offer.shop), packs));
    }
    return words.isEmpty() ? tr("Nothing to buy.") : words.join(u'\n');
}

QString SheetViewModel::name() const
{
    return fromCore(m_sheet.build.name);
}

QStringList SheetViewModel::problems() const
{
    QStringList words;
    if (const workbench::BuildProblems *all = faults()) {
        for (const workbench::BuildProblem &problem : *all)
            words.append(translated(wording::buildProblemSentence(problem)));
    }
    return words;
}

QString SheetViewModel::placeOf(int problem) const
{
    const workbench::BuildProblems *all = faults();
    if (all == nullptr || problem < 0 || static_cast<std::size_t>(problem) >= all->size())
        return {};
    const workbench::BuildProblem &one = (*all)[static_cast<std::size_t>(problem)];
    const QString field = fromCore(one.field);
    switch (one.fault) {
    case BuildFault::TooManyBoxes:
    case BuildFault::TooManyItems:
    case BuildFault::SparesOutOfRange:
    case BuildFault::NoCurrency:
    case BuildFault::NoCode:
    case BuildFault::CodeTwice:
        return QStringLiteral("build");
    case BuildFault::PartTwice:
    case BuildFault::TooFewPieces:
    case BuildFault::TooManyPieces:
        return QStringLiteral("box ") + fromCore(one.about);
    case BuildFault::UnknownItem: // of the catalogue, or of nobody: its page says what is known
        return QStringLiteral("supply ") + field.section(QStringLiteral(".parts."), -1);
    case BuildFault::NoItem:
        return QStringLiteral("shelf");
    default: // "items.pegs.offers.0.pence" (build_problem.h)
        return QStringLiteral("supply ") + field.section(u'.', 1, 1);
    }
}

QString SheetViewModel::spend() const
{
    const workbench::Sheet *reckoned = sheet();
    return reckoned != nullptr ? moneyWords(reckoned->spend.pence, m_sheet.build.currency)
                               : QString();
}

bool SheetViewModel::isOpen() const
{
    const workbench::Sheet *reckoned = sheet();
    return reckoned != nullptr && !workbench::isSettled(*reckoned);
}

QStringList SheetViewModel::bought() const
{
    QStringList words;
    for (const workbench::Purchase &purchase : m_sheet.build.purchases)
        words.append(tr("Bought on %1 for %2.")
                         .arg(dateOf(purchase.day),
                              moneyWords(purchase.spend.pence, m_sheet.build.currency)));
    return words;
}

void SheetViewModel::book()
{
    m_problem = clinicAnswer(*m_household, usecase::bookBuild(m_household->workplace(), m_build));
    emit loaded();
}

} // namespace lidlark::mobile
