#pragma once

#include <QList>
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <algorithm>
#include <functional>
#include <vector>

namespace lidlark::mobile {

/// Words to choose from, one or several: what of them is chosen, and a tap on one.
class OwnChoice : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Part of what is written")
    Q_PROPERTY(QList<QString> names READ names NOTIFY changed FINAL)
    Q_PROPERTY(QList<bool> chosen READ chosen NOTIFY changed FINAL)

public:
    using QObject::QObject;

    /// @param isChosen,tap what is chosen, and what a tap changes: a place among the names each.
    void ask(QStringList names, std::function<bool(int)> isChosen, std::function<void(int)> tap)
    {
        m_names = std::move(names);
        m_isChosen = std::move(isChosen);
        m_tap = std::move(tap);
        emit changed();
    }

    [[nodiscard]] QStringList names() const { return m_names; }
    [[nodiscard]] QList<bool> chosen() const
    {
        QList<bool> all;
        for (int i = 0; i < m_names.size(); ++i)
            all.append(m_isChosen(i));
        return all;
    }
    Q_INVOKABLE void tap(int index)
    {
        if (index < 0 || index >= m_names.size())
            return;
        m_tap(index);
        emit changed();
        emit tapped();
    }

signals:
    void changed();
    void tapped();

private:
    QStringList m_names;
    std::function<bool(int)> m_isChosen;
    std::function<void(int)> m_tap;
};

/// One of several: a tap chooses it.
template <class Value> auto isOne(Value &value)
{
    return [&value](int index) { return static_cast<int>(value) == index; };
}
template <class Value> auto takeOne(Value &value)
{
    return [&value](int index) { value = static_cast<Value>(index); };
}

/// Some of several: a tap puts it in or takes it out.
template <class Value> auto isAmong(std::vector<Value> &values)
{
    return [&values](int index) {
        return std::ranges::find(values, static_cast<Value>(index)) != values.end();
    };
}
template <class Value> auto takeAmong(std::vector<Value> &values)
{
    return [&values](int index) {
        if (std::erase(values, static_cast<Value>(index)) == 0)
            values.push_back(static_cast<Value>(index));
    };
}

} // namespace lidlark::mobile
