#include <QTest>

#include <QRegularExpression>

#include "tests/core/catalogue/shipped_catalogue.h"

/// Every acceptance check of job.md 2.1, 2.2, 2.3 and 2.7 stands in tests/data/acceptance.csv with
/// the test that guards it, or says plainly that nothing does yet, and why.
class TestAcceptanceRows : public QObject
{
    Q_OBJECT

    static QString textOf(const QString &path)
    {
        QFile file(shipped::source(path));
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
    }
    static QStringList numbered(const char *letter, int last)
    {
        QStringList ids;
        for (int i = 1; i <= last; ++i)
            ids.append(QString::fromLatin1(letter) + QString::number(i));
        return ids;
    }

private slots:
    void everyCheckIsAccountedFor()
    {
        QStringList listed;
        for (const shipped::Row &row : shipped::rowsOf("tests/data/acceptance.csv")) {
            const QString id = row.at("check");
            listed.append(id);
            const QString state = row.at("state");
            QVERIFY2(QStringList({"pass", "partly", "not yet"}).contains(state), qPrintable(id));
            if (state != "pass")
                QVERIFY2(row.at("what is missing").size() > 20, qPrintable(id));
            if (state == "not yet" && row.at("where").isEmpty())
                continue;
            const QString test = textOf(row.at("where"));
            QVERIFY2(!test.isEmpty(), qPrintable(id + ": no file " + row.at("where")));
            if (row.at("function").isEmpty()) // a program of its own, which is run whole
                continue;
            const QRegularExpression function("void (\\w+::)?" + row.at("function") + "\\(");
            QVERIFY2(test.contains(function), qPrintable(id + ": no " + row.at("function")));
        }
        const QStringList ids =
            numbered("F", 13) + numbered("C", 7) + numbered("G", 10) + numbered("A", 10);
        QCOMPARE(listed.filter(QRegularExpression("^[^T]")), ids);
        // The therapist's (2.4) are listed as they come, each once and in order.
        QStringList therapists;
        for (const QString &id : numbered("T", 20)) {
            if (listed.contains(id))
                therapists.append(id);
        }
        QCOMPARE(listed.filter(QRegularExpression("^T")), therapists);
    }
};

QTEST_APPLESS_MAIN(TestAcceptanceRows)
#include "tst_acceptance_rows.moc"
