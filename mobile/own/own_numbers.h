#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// Numbers that belong together while they are typed: length, thickness and loop of a cord. They
/// may be there or not as a whole.
class OwnNumbers : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of what is written")
    /// It has such a thing at all.
    Q_PROPERTY(bool there READ isThere WRITE setThere NOTIFY edited FINAL)

public:
    enum Role { LabelRole = Qt::UserRole, WordsRole, ProblemRole };

    struct Ask {
        QString label; ///< "Long, mm".
        double least = 0;
        double most = 0;
        bool whole = false;    ///< No fractions.
        bool optional = false; ///< It may be left empty.
    };

    using QAbstractListModel::QAbstractListModel;
    void ask(std::vector<Ask> asked);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool isThere() const { return m_there; }
    void setThere(bool there);
    /// As typed; always as many as are asked for.
    [[nodiscard]] QStringList typed() const { return m_typed; }
    void show(bool there, const QStringList &typed);
    /// Nothing: left empty, or no such number.
    [[nodiscard]] std::optional<double> number(int row) const;
    [[nodiscard]] std::optional<int> wholeNumber(int row) const;
    [[nodiscard]] double numberOrNone(int row) const { return number(row).value_or(0); }
    /// It is there, and one is missing or is none.
    [[nodiscard]] bool isUnread() const;

    Q_INVOKABLE void write(int row, const QString &text);

signals:
    void edited();

private:
    [[nodiscard]] QString problemAt(int row) const;

    std::vector<Ask> m_asked;
    QStringList m_typed;
    bool m_there = true;
};

} // namespace lidlark::mobile
