#include "own_lines.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

std::string oneLine(QString text)
{
    text.replace(QLatin1Char('\r'), QLatin1Char(' '));
    text.replace(QLatin1Char('\n'), QLatin1Char(' '));
    return toCore(text);
}

int OwnLines::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant OwnLines::data(const QModelIndex &index, int role) const
{
    if (!has(index.row()))
        return {};
    const Line &line = m_lines[static_cast<std::size_t>(index.row())];
    return role == TextRole ? QVariant(line.text) : QVariant(line.lever);
}

QHash<int, QByteArray> OwnLines::roleNames() const
{
    return {{TextRole, "words"}, {LeverRole, "lever"}};
}

void OwnLines::show(std::vector<Line> lines)
{
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
    emit countChanged();
}

void OwnLines::add()
{
    if (rowCount() >= m_most)
        return;
    beginInsertRows({}, rowCount(), rowCount());
    m_lines.emplace_back();
    endInsertRows();
    emit countChanged();
    emit edited();
}

void OwnLines::takeOut(int row)
{
    if (!has(row))
        return;
    beginRemoveRows({}, row, row);
    m_lines.erase(m_lines.begin() + row);
    endRemoveRows();
    emit countChanged();
    emit edited();
}

/// The field that is written in has the words already: nobody else shows them.
void OwnLines::write(int row, const QString &text)
{
    if (!has(row) || m_lines[static_cast<std::size_t>(row)].text == text)
        return;
    m_lines[static_cast<std::size_t>(row)].text = text;
    emit edited();
}

void OwnLines::choose(int row, int lever)
{
    if (!has(row))
        return;
    m_lines[static_cast<std::size_t>(row)].lever = lever;
    emit dataChanged(index(row), index(row), {LeverRole});
    emit edited();
}

} // namespace lidlark::mobile
