#include <QtTest>

#include "core/child/fact_problems.h"

using namespace lidlark;
using child::Fact;

Q_DECLARE_METATYPE(lidlark::child::Fact)

/// A statement that cannot be true, or that nobody can read, is refused with its field named, and
/// the sheet stays as it is. The rules are ours (issue "contradictory answers"); what pica means:
/// activities.md 1.4.
class TestFactProblems : public QObject
{
    Q_OBJECT

private:
    const Day m_today = *dayFrom({2027, 1, 11});

    child::HomeSheet sheet() const
    {
        child::HomeSheet sheet;
        sheet.people = {{{"p-mirren"},
                         "Mirren",
                         child::PersonKind::Child,
                         child::ageFromMonths(28, m_today),
                         child::Answer::Yes,
                         true},
                        {{"p-catriona"}, "Catriona", child::PersonKind::Adult, {}, {}, false}};
        return sheet;
    }

private slots:
    void refusedWithTheFieldNamed_data()
    {
        QTest::addColumn<Fact>("fact");
        QTest::addColumn<QString>("reason");
        QTest::newRow("no such word") << Fact{"", "latex", "perhaps"} << "latex: yes or no";
        QTest::newRow("no word") << Fact{"", "wheat", ""} << "wheat: yes or no";
        QTest::newRow("lives") << Fact{"p-mirren", "lives", "often"} << "lives: yes, visits or no";
        QTest::newRow("no day") << Fact{"p-mirren", "born-by", "2027-02-30"}
                                << "born-by: not a day such as 2022-03-31";
        QTest::newRow("tomorrow") << Fact{"p-mirren", "born-by", "2027-01-12"}
                                  << "born-by: still to come";
        QTest::newRow("pica") << Fact{"p-mirren", "mouths", "no"}
                              << "mouths: pica stands as yes; say no to that first";
        QTest::newRow("a toddler grown up") << Fact{"p-mirren", "kind", "adult"}
                                            << "kind: an adult, but born less than 18 years ago";
        QTest::newRow("letters") << Fact{"", "emergency-number", "ask Gran"}
                                 << "emergency number: only digits, spaces, + and -, at most 20";
        QTest::newRow("too long") << Fact{"", "poison-line", "123456789012345678901"}
                                  << "poison line: only digits, spaces, + and -, at most 20";
    }
    void refusedWithTheFieldNamed()
    {
        QFETCH(Fact, fact);
        QFETCH(QString, reason);
        const child::HomeSheet known = sheet();
        const auto problem = child::problemWith(fact, &known, m_today);
        QVERIFY(problem.has_value());
        QCOMPARE(QString::fromStdString(*problem), reason);
    }

    /// The careful answer may always be said, and what contradicts nothing too.
    void said_data()
    {
        QTest::addColumn<Fact>("fact");
        QTest::newRow("mouths") << Fact{"p-mirren", "mouths", "yes"};
        QTest::newRow("pica of an adult") << Fact{"p-catriona", "pica", "yes"};
        QTest::newRow("no longer, without pica") << Fact{"p-catriona", "mouths", "no"};
        QTest::newRow("somebody new") << Fact{"p-new", "mouths", "no"};
        QTest::newRow("born today") << Fact{"p-mirren", "born-by", "2027-01-11"};
        QTest::newRow("a number off") << Fact{"", "poison-line", ""};
        QTest::newRow("a number") << Fact{"", "emergency-number", "112"};
        QTest::newRow("a name") << Fact{"", "name", "Mum's"};
        QTest::newRow("latex") << Fact{"p-mirren", "latex", "yes"};
    }
    void said()
    {
        QFETCH(Fact, fact);
        const child::HomeSheet known = sheet();
        QVERIFY(!child::problemWith(fact, &known, m_today).has_value());
        QVERIFY(!child::problemWith(fact, nullptr, m_today).has_value());
    }
};

QTEST_APPLESS_MAIN(TestFactProblems)
#include "tst_fact_problems.moc"
