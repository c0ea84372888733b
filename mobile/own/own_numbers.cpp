#include "own_numbers.h"

#include "mobile/bridge/numerals.h"
#include "mobile/bridge/typed_number.h"

#include <cmath>

namespace lidlark::mobile {

void OwnNumbers::ask(std::vector<Ask> asked)
{
    m_asked = std::move(asked);
    show(m_there, {});
}

void OwnNumbers::show(bool there, const QStringList &typed)
{
    beginResetModel();
    m_there = there;
    m_typed = typed.mid(0, rowCount());
    while (m_typed.size() < rowCount())
        m_typed.append(QString());
    endResetModel();
    emit edited();
}

int OwnNumbers::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_asked.size());
}

QVariant OwnNumbers::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    switch (role) {
    case LabelRole:
        return m_asked[static_cast<std::size_t>(index.row())].label;
    case WordsRole:
        return m_typed.value(index.row());
    case ProblemRole:
        return problemAt(index.row());
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnNumbers::roleNames() const
{
    return {{LabelRole, "label"}, {WordsRole, "words"}, {ProblemRole, "problem"}};
}

void OwnNumbers::setThere(bool there)
{
    if (m_there == there)
        return;
    m_there = there;
    emit edited();
}

std::optional<double> OwnNumbers::number(int row) const
{
    if (row < 0 || row >= rowCount())
        return std::nullopt;
    const Ask &asked = m_asked[static_cast<std::size_t>(row)];
    const auto amount = amountFrom(m_typed.value(row), asked.least, asked.most);
    return amount && asked.whole && std::floor(*amount) != *amount ? std::nullopt : amount;
}

std::optional<int> OwnNumbers::wholeNumber(int row) const
{
    const auto amount = number(row);
    return amount ? std::optional(static_cast<int>(std::lround(*amount))) : std::nullopt;
}

QString OwnNumbers::problemAt(int row) const
{
    if (m_typed.value(row).trimmed().isEmpty() || number(row))
        return {};
    const Ask &asked = m_asked[static_cast<std::size_t>(row)];
    const QString least = typedAmount(asked.least);
    const QString most = typedAmount(asked.most);
    return numerals(
        (asked.whole ? tr("A whole number from %1 to %2.") : tr("A number from %1 to %2."))
            .arg(least, most));
}

bool OwnNumbers::isUnread() const
{
    if (!m_there)
        return false;
    for (int row = 0; row < rowCount(); ++row) {
        const bool empty = m_typed.value(row).trimmed().isEmpty();
        const bool mayBe = empty && m_asked[static_cast<std::size_t>(row)].optional;
        if (!mayBe && !number(row))
            return true;
    }
    return false;
}

void OwnNumbers::write(int row, const QString &text)
{
    if (row < 0 || row >= rowCount() || m_typed[row] == text)
        return;
    m_typed[row] = text;
    emit dataChanged(index(row), index(row), {ProblemRole});
    emit edited();
}

} // namespace lidlark::mobile
