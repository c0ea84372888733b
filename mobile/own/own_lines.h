#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <string>
#include <vector>

namespace lidlark::mobile {

/// A field takes one line of the file.
std::string oneLine(QString text);

/// Lines that are being written, each by itself: steps, ways to make it easier, what to say. A line
/// that comes or goes leaves the others as they are, and the cursor where it was.
class OwnLines : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of what is written")
    Q_PROPERTY(int count READ rows NOTIFY countChanged FINAL)
    Q_PROPERTY(int most READ most CONSTANT FINAL)

public:
    enum Role { TextRole = Qt::UserRole, LeverRole };

    struct Line {
        QString text;
        int lever = 0; ///< Of a grading: place among the levers.
    };

    OwnLines(int most, QObject *parent) : QAbstractListModel(parent), m_most(most) {}

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int rows() const { return rowCount(); }
    [[nodiscard]] int most() const { return m_most; }
    [[nodiscard]] const std::vector<Line> &lines() const { return m_lines; }
    void show(std::vector<Line> lines);

    Q_INVOKABLE void add();
    Q_INVOKABLE void takeOut(int row);
    Q_INVOKABLE void write(int row, const QString &text);
    Q_INVOKABLE void choose(int row, int lever);

signals:
    void countChanged();
    void edited();

private:
    [[nodiscard]] bool has(int row) const { return row >= 0 && row < rowCount(); }

    std::vector<Line> m_lines;
    int m_most;
};

} // namespace lidlark::mobile
