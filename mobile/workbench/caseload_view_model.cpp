#include "caseload_view_model.h"

#include "matter_words.h"

#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

#include <algorithm>

namespace lidlark::mobile {

void CaseloadViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &CaseloadViewModel::load);
    load();
}

void CaseloadViewModel::load()
{
    renewRows([this] { readRows(); });
    emit loaded();
}

void CaseloadViewModel::readRows()
{
    using wording::BoxMatter;
    m_rows.clear();
    m_boxes = 0;
    m_toPack = 0;
    const auto all = caseloadOn(*m_household);
    m_problem = all ? QString() : m_household->sentenceFor(all.error());
    if (!all)
        return;
    m_boxes = static_cast<int>(all->size());
    for (const usecase::BoxHealth &health : *all) {
        m_toPack += static_cast<int>(health.asked.size());
        if (health.problem)
            m_rows.push_back({fromCore(health.child),
                              tr("Cannot be read"),
                              {m_household->sentenceFor(*health.problem)}});
    }
    for (const BoxMatter matter : {BoxMatter::SafetyNote, BoxMatter::AwaitingConfirmation,
                                   BoxMatter::NeedsStock, BoxMatter::ReviewDue})
        addColumn(*all, matter);
    for (const usecase::BoxHealth &health : *all) {
        if (health.isWell())
            m_rows.push_back({fromCore(health.child), tr("Nothing waits"), {}});
    }
}

void CaseloadViewModel::addColumn(const std::vector<usecase::BoxHealth> &all,
                                  wording::BoxMatter matter)
{
    for (const usecase::BoxHealth &health : all) {
        const std::vector<wording::BoxMatter> matters = mattersOf(health);
        if (std::ranges::find(matters, matter) != matters.end())
            m_rows.push_back({fromCore(health.child), translated(wording::boxMatter(matter)),
                              linesOf(*m_household, health, matter)});
    }
}

QString CaseloadViewModel::boxWords() const
{
    return numerals(tr("%n boxes", nullptr, m_boxes));
}

QString CaseloadViewModel::packWords() const
{
    return m_toPack > 0 ? numerals(tr("%n things to pack.", nullptr, m_toPack))
                        : tr("Nothing to pack.");
}

QStringList CaseloadViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const Row &row : m_rows)
        keys.append(row.matter + u'/' + row.child);
    return keys;
}

int CaseloadViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant CaseloadViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const Row &row = m_rows[at];
    switch (role) {
    case ChildRole:
        return row.child;
    case HeadingRole:
        return at == 0 || m_rows[at - 1].matter != row.matter ? row.matter : QString();
    case MatterRole:
        return row.matter;
    case WordsRole:
        return row.lines.join(u'\n');
    default:
        return {};
    }
}

QHash<int, QByteArray> CaseloadViewModel::roleNames() const
{
    return {{ChildRole, "child"},
            {HeadingRole, "heading"},
            {MatterRole, "matter"},
            {WordsRole, "words"}};
}

} // namespace lidlark::mobile
