#pragma once

#include "tests/support/dav_server.h"

#include <QTest>

#include <map>
#include <memory>

Q_DECLARE_METATYPE(lidlark::test::DavKind)

namespace lidlark::test {

/// A row of test data for each kind of server.
inline void addDavKinds()
{
    QTest::addColumn<DavKind>("kind");
    QTest::newRow("Apache") << DavKind::Apache;
    QTest::newRow("lighttpd") << DavKind::Lighttpd;
}

/// Both servers, for a test whose every function is called for each of `addDavKinds`.
class BothDavServers
{
public:
    /// From initTestCase.
    void start()
    {
        for (const DavKind kind : {DavKind::Apache, DavKind::Lighttpd}) {
            m_servers[kind] = std::make_unique<DavServer>(kind);
            QVERIFY2(m_servers[kind]->start(), qPrintable(m_servers[kind]->problem()));
        }
    }
    /// The one that this call is about.
    [[nodiscard]] const DavServer &current() const
    {
        QFETCH_GLOBAL(DavKind, kind);
        return *m_servers.at(kind);
    }

private:
    std::map<DavKind, std::unique_ptr<DavServer>> m_servers;
};

} // namespace lidlark::test
