#pragma once

#include <QList>
#include <QQuickItem>
#include <QStringList>

#include <vector>

namespace lidlark::test {

/// Where a control lies in the tree of a window: under which named items, from the outermost to the
/// innermost, and from there by which child of which child. The same in every language, also where
/// a list is in another order, so that what was found once by its English name is found again
/// without it.
struct Address {
    QStringList names;
    QList<int> places;
};

[[nodiscard]] Address addressOf(const QQuickItem *item);

/// @returns null: there is no such item, or it is not to be seen.
[[nodiscard]] QQuickItem *itemAt(QQuickItem *root, const Address &address);

/// The first item to be seen under @p under, itself among them, whose objectName begins with
/// @p name. @param whole is @p name.
[[nodiscard]] QQuickItem *itemNamed(QQuickItem *under, const QString &name, bool whole = false);

/// The addresses of one walk, in their order: written in English, read in every other language.
class Trail
{
public:
    /// From here on it is read, from its beginning.
    void follow();
    [[nodiscard]] bool follows() const { return m_follows; }

    void write(const Address &address) { m_addresses.push_back(address); }
    /// @returns an empty one when the walk is longer than it was when it was written.
    [[nodiscard]] Address read();

private:
    std::vector<Address> m_addresses;
    std::size_t m_next = 0;
    bool m_follows = false;
};

} // namespace lidlark::test
