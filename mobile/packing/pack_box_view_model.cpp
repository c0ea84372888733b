#include "pack_box_view_model.h"

#include "core/wording/pack_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

using workbench::Hand;
using workbench::LineState;
using workbench::PackLine;

void PackBoxViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PackBoxViewModel::load);
    load();
}

QString PackBoxViewModel::build() const
{
    return fromCore(m_build.value);
}

void PackBoxViewModel::setBuild(const QString &build)
{
    m_build = {toCore(build)};
    load();
}

QString PackBoxViewModel::code() const
{
    return fromCore(m_code);
}

void PackBoxViewModel::setCode(const QString &code)
{
    m_code = toCore(code);
    load();
}

QString PackBoxViewModel::looker() const
{
    if (m_household == nullptr) // QML asks before it has set it
        return {};
    return m_looker.empty() ? m_household->person() : fromCore(m_looker);
}

void PackBoxViewModel::setLooker(const QString &looker)
{
    m_looker = toCore(looker.trimmed());
    m_problem.clear();
    load();
}

void PackBoxViewModel::load()
{
    if (m_household == nullptr || m_build.value.empty() || m_code.empty())
        return;
    renewRows([this] { readRows(); });
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1));
    emit loaded();
}

void PackBoxViewModel::readRows()
{
    const auto table = usecase::packTable(m_household->workplace(), m_build);
    const workbench::PackBox *box = table ? table->box(m_code) : nullptr;
    m_box = box != nullptr ? *box : workbench::PackBox{};
    if (!table) {
        m_problem = m_household->sentenceFor(table.error());
        return;
    }
    m_gone = table->isHandedOver(m_code);
}

QStringList PackBoxViewModel::rowKeys() const
{
    QStringList keys;
    for (const PackLine &line : m_box.lines)
        keys.append(fromCore(line.item.value));
    return keys;
}

int PackBoxViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_box.lines.size());
}

QVariant PackBoxViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const PackLine &line = m_box.lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(line.item.value);
    case NameRole:
        return packingName(packingNames(*m_household), line.item);
    case DrawingRole:
        return clinicDrawing(*m_household, line.item);
    case PiecesRole:
        return line.pieces;
    default:
        return stateOf(line, role);
    }
}

QVariant PackBoxViewModel::stateOf(const PackLine &line, int role) const
{
    switch (role) {
    case HandRole:
        return line.hand == Hand::Unsaid ? QString() : fromCore(workbench::handNames.of(line.hand));
    case CallRole:
        return line.item == m_refused ? translated(wording::otherHandWords(m_code, line.hand))
                                      : QString();
    case StateRole:
        if (line.state == LineState::Open)
            return QString();
        return translated(line.perhapsTwice ? wording::perhapsTwiceWords()
                                            : wording::lineWords(line));
    case InRole:
        return line.isIn();
    case WrongRole:
        return line.perhapsTwice || line.state == LineState::WrongHand ||
               line.state == LineState::WrongCount;
    case LookedRole:
        return line.state == LineState::LookedOver;
    case MayLookRole:
        return m_box.special && workbench::PackBox::mayLookOver(line, toCore(looker()));
    default:
        return {};
    }
}

QHash<int, QByteArray> PackBoxViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},   {NameRole, "name"},   {DrawingRole, "drawing"},
            {PiecesRole, "pieces"},   {HandRole, "hand"},   {StateRole, "stateWords"},
            {InRole, "isIn"},         {WrongRole, "wrong"}, {LookedRole, "looked"},
            {MayLookRole, "mayLook"}, {CallRole, "call"}};
}

QString PackBoxViewModel::whose() const
{
    return m_box.whose.empty() ? tr("nobody yet") : fromCore(m_box.whose);
}

QStringList PackBoxViewModel::callOuts() const
{
    if (m_household == nullptr)
        return {};
    const wording::ItemNames names = packingNames(*m_household);
    QStringList lines;
    for (const wording::CalledLine &line : wording::callOutLines(m_box.callOuts, names))
        lines.append(translated(line.words));
    return lines;
}

QStringList PackBoxViewModel::takeOut() const
{
    if (m_household == nullptr)
        return {};
    const wording::ItemNames names = packingNames(*m_household);
    QStringList items;
    for (const ItemId &item : m_box.takeOut)
        items.append(packingName(names, item));
    return items;
}

QString PackBoxViewModel::readyWords() const
{
    return m_gone ? tr("Handed over.") : translated(wording::readyWords(m_box));
}

bool PackBoxViewModel::waitsForLook() const
{
    return m_box.notReady == workbench::NotReady::SecondLook;
}

usecase::PackLineAt PackBoxViewModel::lineAt(int row) const
{
    return {m_build, m_code, m_box.lines[static_cast<std::size_t>(row)].item};
}

void PackBoxViewModel::tick(int row, const QString &hand)
{
    if (row < 0 || row >= rowCount())
        return;
    const auto made = workbench::handNames.parse(toCore(hand)).value_or(Hand::Unsaid);
    const PackLine &line = m_box.lines[static_cast<std::size_t>(row)];
    m_refused = line.hand != made ? line.item : ItemId();
    if (!m_refused.empty()) {
        emit dataChanged(index(row), index(row));
        return;
    }
    answer(usecase::packLine(m_household->workplace(), lineAt(row), made));
}

void PackBoxViewModel::untick(int row)
{
    if (row >= 0 && row < rowCount())
        answer(usecase::unpackLine(m_household->workplace(), lineAt(row)));
}

void PackBoxViewModel::lookOver(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    usecase::PackLineAt at = lineAt(row);
    at.author = m_looker;
    answer(usecase::lookOver(m_household->workplace(), at));
}

void PackBoxViewModel::isOut(int at)
{
    if (at < 0 || at >= static_cast<int>(m_box.takeOut.size()))
        return;
    const ItemId item = m_box.takeOut[static_cast<std::size_t>(at)];
    answer(usecase::unpackLine(m_household->workplace(), {m_build, m_code, item}));
}

bool PackBoxViewModel::handOver()
{
    const bool handedOver =
        answer(usecase::issuePackedBox(m_household->workplace(), m_build, m_code));
    if (handedOver)
        m_household->countBoxes();
    return handedOver;
}

bool PackBoxViewModel::answer(const Outcome &outcome)
{
    m_problem = clinicAnswer(*m_household, outcome);
    emit loaded();
    return outcome.ok();
}

} // namespace lidlark::mobile
