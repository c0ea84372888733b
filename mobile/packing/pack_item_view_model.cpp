#include "pack_item_view_model.h"

#include "core/wording/pack_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

workbench::Hand handFrom(const QString &hand)
{
    return workbench::handNames.parse(toCore(hand)).value_or(workbench::Hand::Unsaid);
}

} // namespace

void PackItemViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PackItemViewModel::load);
    load();
}

QString PackItemViewModel::build() const
{
    return fromCore(m_build.value);
}

void PackItemViewModel::setBuild(const QString &build)
{
    m_build = {toCore(build)};
    if (m_household != nullptr)
        load();
}

void PackItemViewModel::setAt(int at)
{
    m_at = at;
    m_problem.clear();
    m_refused.clear();
    if (m_household != nullptr)
        load();
}

void PackItemViewModel::load()
{
    if (m_build.value.empty())
        return;
    renewRows([this] { readRows(); });
    emit loaded();
}

void PackItemViewModel::readRows()
{
    m_rows.clear();
    m_plain = 0;
    const auto table = usecase::packTable(m_household->workplace(), m_build);
    if (!table) {
        m_problem = m_household->sentenceFor(table.error());
        return;
    }
    readItems(*table);
    m_at = std::clamp(m_at, 0, std::max(0, items() - 1));
    for (const workbench::PackBox &box : table->boxes) {
        if (!table->isHandedOver(box.code))
            addRow(box);
    }
    m_plain = static_cast<int>(usecase::plainBoxesWithout(*table, item()).size());
}

/// In the order in which they first stand on a list.
void PackItemViewModel::readItems(const usecase::PackTable &table)
{
    m_items.clear();
    for (const workbench::PackBox &box : table.boxes) {
        for (const workbench::PackLine &line : box.lines) {
            if (std::ranges::find(m_items, line.item) == m_items.end())
                m_items.push_back(line.item);
        }
    }
}

void PackItemViewModel::addRow(const workbench::PackBox &box)
{
    const auto line = std::ranges::find(box.lines, item(), &workbench::PackLine::item);
    if (line == box.lines.end())
        return;
    QStringList calls;
    for (const workbench::CallOut &call : box.callOuts) {
        const bool ofHand =
            call.kind == workbench::CallKind::LeftHand && line->hand != workbench::Hand::Unsaid;
        const bool ofItem = call.kind != workbench::CallKind::LeftHand &&
                            call.kind != workbench::CallKind::Avoids && call.item == item();
        if (ofHand || ofItem)
            calls.append(translated(wording::callOutWords(call, packingNames(*m_household))));
    }
    m_rows.push_back({box.code, box.whose, *line, calls.join(u' ')});
}

ItemId PackItemViewModel::item() const
{
    const auto at = static_cast<std::size_t>(m_at);
    return at < m_items.size() ? m_items[at] : ItemId{};
}

QStringList PackItemViewModel::rowKeys() const
{
    QStringList keys;
    for (const Row &row : m_rows)
        keys.append(fromCore(row.code) + u'/' + fromCore(row.line.item.value));
    return keys;
}

int PackItemViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant PackItemViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case CodeRole:
        return fromCore(row.code);
    case WhoseRole:
        return row.whose.empty() ? tr("nobody yet") : fromCore(row.whose);
    case PiecesRole:
        return row.line.pieces;
    case CallRole:
        return row.code == m_refused ? translated(wording::otherHandWords(row.code, row.line.hand))
                                     : row.call;
    case StateRole:
        return row.line.state == workbench::LineState::Open
                   ? QString()
                   : translated(wording::lineWords(row.line));
    case InRole:
        return row.line.isIn();
    case HandRole:
        return row.line.hand == workbench::Hand::Unsaid
                   ? QString()
                   : fromCore(workbench::handNames.of(row.line.hand));
    case WrongRole:
        return row.line.state == workbench::LineState::WrongHand ||
               row.line.state == workbench::LineState::WrongCount;
    default:
        return {};
    }
}

QHash<int, QByteArray> PackItemViewModel::roleNames() const
{
    return {{CodeRole, "code"}, {WhoseRole, "whose"},      {PiecesRole, "pieces"},
            {CallRole, "call"}, {StateRole, "stateWords"}, {InRole, "isIn"},
            {HandRole, "hand"}, {WrongRole, "wrong"}};
}

QString PackItemViewModel::name() const
{
    return m_items.empty() ? QString() : packingName(packingNames(*m_household), item());
}

QString PackItemViewModel::drawing() const
{
    return m_items.empty() ? QString() : clinicDrawing(*m_household, item());
}

QString PackItemViewModel::countWords() const
{
    int all = 0;
    int left = 0;
    for (const Row &row : m_rows) {
        all += row.line.pieces;
        left += row.line.isIn() ? 0 : row.line.pieces;
    }
    return left == 0 ? tr("%1 in all. All of them are in.").arg(numerals(all))
                     : tr("%1 in all, %2 still to go in.").arg(numerals(all), numerals(left));
}

void PackItemViewModel::tick(int row, const QString &hand)
{
    if (row < 0 || row >= rowCount())
        return;
    const Row &chosen = m_rows[static_cast<std::size_t>(row)];
    const std::string code = chosen.code;
    m_refused = chosen.line.hand != handFrom(hand) ? code : std::string();
    if (!m_refused.empty()) {
        emit dataChanged(index(row), index(row));
        return;
    }
    answer(usecase::packLine(m_household->workplace(), {m_build, code, item()}, handFrom(hand)));
}

void PackItemViewModel::untick(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    const std::string code = m_rows[static_cast<std::size_t>(row)].code;
    answer(usecase::unpackLine(m_household->workplace(), {m_build, code, item()}));
}

void PackItemViewModel::tickPlain()
{
    answer(usecase::packPlainBoxes(m_household->workplace(), m_build, item()));
}

void PackItemViewModel::answer(const Outcome &outcome)
{
    m_problem = clinicAnswer(*m_household, outcome);
    emit loaded();
}

} // namespace lidlark::mobile
