#include "build_view_model.h"

#include "core/workbench/box_departures.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <set>

namespace lidlark::mobile {

void BuildViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &BuildViewModel::load);
    load();
}

QString BuildViewModel::build() const
{
    return fromCore(m_id.value);
}

void BuildViewModel::setBuild(const QString &build)
{
    m_id = {toCore(build)};
    if (m_household != nullptr)
        load();
}

void BuildViewModel::load()
{
    if (m_id.empty())
        return;
    m_names = boughtNames(*m_household);
    m_designs = designsOn(*m_household);
    if (!m_designs.contains(m_design))
        m_design = m_designs.empty() ? workbench::DesignId() : m_designs.begin()->first;
    renewRows([this] { readRows(); });
    emit loaded();
}

void BuildViewModel::readRows()
{
    const auto sheet = usecase::buildSheetOf(m_household->workplace(), m_id);
    m_build = sheet ? sheet->build : workbench::KeptBuild();
    if (!sheet)
        m_problem = m_household->sentenceFor(sheet.error());
    if (m_head.id.empty())
        m_head = m_build;
}

QStringList BuildViewModel::rowKeys() const
{
    QStringList keys;
    for (const workbench::KeptBox &box : m_build.boxes)
        keys.append(fromCore(box.box.code));
    return keys;
}

const workbench::Design *BuildViewModel::designOf(const workbench::KeptBox &box) const
{
    const auto found = m_designs.find(box.box.design);
    return found != m_designs.end() ? &found->second : nullptr;
}

int BuildViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_build.boxes.size());
}

QVariant BuildViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const workbench::KeptBox &box = m_build.boxes[static_cast<std::size_t>(index.row())];
    const workbench::Design *design = designOf(box);
    switch (role) {
    case CodeRole:
        return fromCore(box.box.code);
    case WhoseRole:
        return box.box.whose.empty() ? tr("nobody yet") : fromCore(box.box.whose);
    case NoteRole: {
        const QStringList words = callOutsOf(box, design, m_names);
        return words.isEmpty() && design != nullptr
                   ? tr("%1, as designed").arg(fromCore(design->name))
                   : words.join(u'\n');
    }
    case SpecialRole:
        return workbench::isSpecial(box, design);
    default:
        return {};
    }
}

QHash<int, QByteArray> BuildViewModel::roleNames() const
{
    return {{CodeRole, "code"}, {WhoseRole, "whose"}, {NoteRole, "note"}, {SpecialRole, "special"}};
}

QString BuildViewModel::name() const
{
    return fromCore(m_build.name);
}

QString BuildViewModel::dayWords() const
{
    return m_head.id.empty() ? QString() : dateOf(m_head.day);
}

QString BuildViewModel::currency() const
{
    return fromCore(m_build.currency);
}

void BuildViewModel::setSpares(int percent)
{
    m_head.sparesPercent = percent;
    emit loaded();
}

QString BuildViewModel::headWords() const
{
    return m_build.id.empty()
               ? QString()
               : tr("Packed on %1. Spares: %2 percent. Prices in %3.")
                     .arg(dateOf(m_build.day), numerals(m_build.sparesPercent), currency());
}

QString BuildViewModel::boughtWords() const
{
    QStringList words;
    for (const workbench::Purchase &purchase : m_build.purchases)
        words.append(
            tr("Bought on %1 for %2.")
                .arg(dateOf(purchase.day), moneyWords(purchase.spend.pence, m_build.currency)));
    return words.join(u'\n');
}

QStringList BuildViewModel::designIds() const
{
    QStringList ids;
    for (const auto &[id, design] : m_designs)
        ids.append(fromCore(id.value));
    return ids;
}

QStringList BuildViewModel::designNames() const
{
    QStringList names;
    for (const auto &[id, design] : m_designs)
        names.append(fromCore(design.name));
    return names;
}

QString BuildViewModel::design() const
{
    return fromCore(m_design.value);
}

void BuildViewModel::setDesign(const QString &design)
{
    m_design = {toCore(design)};
    forget();
}

QStringList BuildViewModel::childrenLeft() const
{
    if (m_household == nullptr)
        return {};
    std::set<QString> served;
    for (const workbench::KeptBox &box : m_build.boxes)
        served.insert(fromCore(box.box.whose));
    QStringList left;
    for (const QString &child : childrenOn(*m_household)) {
        if (!served.contains(child))
            left.append(child);
    }
    return left;
}

void BuildViewModel::moveDay(int days)
{
    m_head.day = m_head.day + days;
    emit loaded();
}

bool BuildViewModel::keepHead(const QString &name, const QString &currency)
{
    workbench::KeptBuild head = m_head;
    head.name = toCore(name);
    head.currency = toCore(currency.trimmed().toUpper());
    m_problem = clinicAnswer(*m_household, usecase::changeBuild(m_household->workplace(), head));
    emit loaded();
    return m_problem.isEmpty();
}

} // namespace lidlark::mobile
