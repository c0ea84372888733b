#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from activities.md 1.4 (the two facts) and 2.1; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestRoom : public QObject
{
    Q_OBJECT

private slots:
    void thePlayingChildIsOneOfTheRoom();
    void whoIsSmallAndWhoMouths_data();
    void whoIsSmallAndWhoMouths();
    void whoCountsAsHere_data();
    void whoCountsAsHere();
};

void TestRoom::whoIsSmallAndWhoMouths_data()
{
    // safety.md SP-03: mouthing counts, whatever the birthday says.
    QTest::addColumn<int>("months"); // -1: nobody has said.
    QTest::addColumn<QString>("answer");
    QTest::addColumn<bool>("pica");
    QTest::addColumn<bool>("underThree");
    QTest::addColumn<bool>("mouther");
    // activities.md 1.4, "Under-three: any child under 36 months" and "Mouther: any child under 24
    // months; any child of 24-35 months unless an adult has answered 'no longer puts things in the
    // mouth'; any child of any age whose adult says that they still do, or with pica noted.
    // Unanswered counts as yes."
    QTest::newRow("9 months") << 9 << "unanswered" << false << true << true;
    QTest::newRow("23 months, said no") << 23 << "no" << false << true << true;
    QTest::newRow("24 months, unanswered") << 24 << "unanswered" << false << true << true;
    QTest::newRow("24 months, said no") << 24 << "no" << false << true << false;
    QTest::newRow("25 months, said yes") << 25 << "yes" << false << true << true;
    QTest::newRow("35 months, unanswered") << 35 << "unanswered" << false << true << true;
    QTest::newRow("35 months, said no") << 35 << "no" << false << true << false;
    QTest::newRow("35 months, said no, pica") << 35 << "no" << true << true << true;
    QTest::newRow("36 months, unanswered") << 36 << "unanswered" << false << false << false;
    QTest::newRow("36 months, said yes") << 36 << "yes" << false << false << true;
    QTest::newRow("ten years, said yes") << 120 << "yes" << false << false << true;
    QTest::newRow("ten years, pica") << 120 << "unanswered" << true << false << true;
    QTest::newRow("ten years, said no, pica") << 120 << "no" << true << false << true;
    QTest::newRow("age unknown") << -1 << "unanswered" << false << true << true;
    QTest::newRow("age unknown, said no") << -1 << "no" << false << true << false;
    QTest::newRow("age unknown, said yes") << -1 << "yes" << false << true << true;
}

void TestRoom::whoIsSmallAndWhoMouths()
{
    QFETCH(int, months);
    QFETCH(QString, answer);
    QFETCH(bool, pica);
    const Day today = *dayFrom({2027, 1, 11});
    child::Person person;
    if (months >= 0)
        person.age = child::ageFromMonths(months, today);
    person.mouths = *child::answerNames.parse(answer.toStdString());
    person.pica = pica;
    QTEST(isUnderThree(person, today), "underThree");
    QTEST(isMouther(person, today), "mouther");
}

void TestRoom::whoCountsAsHere_data()
{
    QTest::addColumn<bool>("homeSheet");
    QTest::addColumn<QString>("present"); // "-": not asked.
    QTest::addColumn<bool>("visitorUnderThree");
    QTest::addColumn<bool>("visitorMouther");
    QTest::addColumn<bool>("underThree");
    QTest::addColumn<bool>("mouther");
    QTest::addColumn<QString>("who");
    // activities.md 2.1, inputs: "who is in the room (asked; unanswered means everyone on the home
    // sheet, and without a home sheet an under-three who mouths)". The sheet: Mirren, 25 months, no
    // answer; Tam, 60 months, said to mouth; Ailsa, 30 months, no longer, a visitor; a grown-up.
    QTest::newRow("not asked, no sheet") << false << "-" << false << false << true << true << "";
    QTest::newRow("asked, no sheet") << false << "" << false << false << false << false << "";
    QTest::newRow("asked, no sheet, a small visitor")
        << false << "" << true << false << true << false << "";
    QTest::newRow("asked, no sheet, a mouthing visitor")
        << false << "" << false << true << false << true << "";
    QTest::newRow("asked, no sheet, somebody nobody knows")
        << false << "Mirren" << false << false << true << true << "";
    QTest::newRow("not asked") << true << "-" << false << false << true << true
                               << "Mirren, Ailsa / Mirren, Tam";
    QTest::newRow("nobody else") << true << "" << false << false << false << false << "";
    QTest::newRow("Mirren") << true << "Mirren" << false << false << true << true
                            << "Mirren / Mirren";
    QTest::newRow("Tam") << true << "Tam" << false << false << false << true << " / Tam";
    QTest::newRow("Ailsa visits") << true << "Ailsa" << false << false << true << false
                                  << "Ailsa / ";
    QTest::newRow("a grown-up") << true << "Ruth" << false << false << false << false << "";
    QTest::newRow("somebody on no sheet")
        << true << "Mystery" << false << false << true << true << "";
}

void TestRoom::whoCountsAsHere()
{
    QFETCH(bool, homeSheet);
    QFETCH(QString, present);
    QFETCH(bool, visitorUnderThree);
    QFETCH(bool, visitorMouther);
    QFETCH(QString, who);
    GateWorld world(items());
    world.addChild("Mirren", 25, Answer::Unanswered);
    world.addChild("Tam", 60, Answer::Yes);
    world.addChild("Ailsa", 30, Answer::No).visits = true;
    world.addChild("Ruth", std::nullopt, Answer::Unanswered).kind = child::PersonKind::Adult;
    if (present != "-") {
        world.room.present.emplace();
        for (const QString &name : present.split(' ', Qt::SkipEmptyParts))
            world.room.present->push_back({name.toStdString()});
    }
    world.room.visitorUnderThree = visitorUnderThree;
    world.room.visitorMouther = visitorMouther;
    const Company company =
        companyIn(world.room, homeSheet ? &world.home : nullptr, world.child, world.today);
    const auto joined = [](const std::vector<std::string> &names) {
        QStringList list;
        for (const std::string &name : names)
            list << QString::fromStdString(name);
        return list.join(", ");
    };
    QTEST(company.underThree, "underThree");
    QTEST(company.mouther, "mouther");
    const QString small = joined(company.underThreeNames);
    const QString mouthing = joined(company.moutherNames);
    QCOMPARE(small + " / " + mouthing, who.isEmpty() ? QString(" / ") : who);
}

void TestRoom::thePlayingChildIsOneOfTheRoom()
{
    // activities.md 1.4: "everyone who will be in the room, the playing child included".
    GateWorld world(items());
    world.room.present.emplace();
    const auto company = [&world] {
        return companyIn(world.room, &world.home, world.child, world.today);
    };
    QVERIFY(!company().underThree && !company().mouther);
    child::Person &row = world.addChild("child", 120, Answer::No);
    row.pica = true;
    QVERIFY(!company().underThree && company().mouther);
    row.pica = false;
    row.mouths = Answer::Yes;
    QVERIFY(!company().underThree && company().mouther);
    // Of two ages the younger counts; an age the child's own record lacks stays unknown.
    row.mouths = Answer::No;
    row.age = child::ageFromMonths(30, world.today);
    QVERIFY(company().underThree && !company().mouther);
    row.age = child::ageFromMonths(120, world.today);
    world.child.age = std::nullopt;
    QVERIFY(company().underThree && !company().mouther);
}

QTEST_APPLESS_MAIN(TestRoom)
#include "tst_room.moc"
