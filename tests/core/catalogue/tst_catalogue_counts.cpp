#include <QTest>

#include "core/safety/admit.h"
#include "shipped_catalogue.h"

#include <set>

using namespace lidlark;
using namespace lidlark::catalogue;

// The catalogue we ship, through the gate, against the counts of activities.md section 5.

namespace {

QString shown(const std::set<QString> &values)
{
    return QStringList(values.begin(), values.end()).join(' ');
}

/// A box with plenty of everything that comes from a box, swaps apart.
safety::BoxState standardBox(const Catalogue &catalogue)
{
    safety::BoxState box;
    for (const ItemKind &item : catalogue.items()) {
        if (item.lidCount > 0)
            box.items[item.id] = {item.lidCount, false};
    }
    return box;
}

/// Beside an under-three a tin of 64 to 102 mm is held back (safety.md HM-01): the wider one of the
/// kitchen, or a sealed one, takes its place, and the entry counts as offered.
bool onlyAnotherTin(const safety::Admitted &form)
{
    return std::ranges::all_of(form.swaps(),
                               [](const auto &swap) { return swap.first == ItemId{"tin"}; });
}

QString numbersIn(const std::vector<safety::Admitted> &admitted)
{
    std::set<QString> numbers;
    for (const safety::Admitted &form : admitted) {
        if (form.swaps().empty() || onlyAnotherTin(form))
            numbers.insert(QString::fromStdString(form.activity().entry));
    }
    return shown(numbers);
}

} // namespace

class TestCatalogueCounts : public QObject
{
    Q_OBJECT

private slots:
    void everyBoxItemIsOfUse();
    void whoIsInTheRoomDecidesAsCounted_data();
    void whoIsInTheRoomDecidesAsCounted();
    void besideThoseCountsTheTinIsAnother();
    void anUnknownChildGetsTheFiveEntries();
    void aLatexFreeHomeGetsTheEntriesCounted();

private:
    /// What a nine-year-old may play with a full box while a sibling of 25 months is there.
    safety::Gated besideASibling(bool mouther) const;

    const Catalogue m_catalogue = shipped::catalogue();
    const Day m_today = *dayFrom({2027, 1, 11});
};

void TestCatalogueCounts::everyBoxItemIsOfUse()
{
    // Source: activities.md 2.3, every item of a box is used by at least two entries.
    for (const ItemKind &item : m_catalogue.items()) {
        if (item.lidCount == 0)
            continue;
        int uses = 0;
        for (const Activity &activity : m_catalogue.activities()) {
            for (const ItemUse &use : activity.items)
                uses += use.item == item.id ? 1 : 0;
        }
        QVERIFY2(uses >= 2, item.id.value.c_str());
    }
}

safety::Gated TestCatalogueCounts::besideASibling(bool mouther) const
{
    const child::Child nine{{"c"}, "Oona", child::ageFromMonths(108, m_today), false, {}};
    child::HomeSheet home;
    home.avoidances = {
        child::Answer::No, child::Answer::No, child::Answer::No, child::Answer::No, {}};
    home.likesTouch = child::Answer::Yes;
    child::Person sibling{
        {"s"}, "Mirren", child::PersonKind::Child, child::ageFromMonths(25, m_today)};
    sibling.mouths = mouther ? child::Answer::Unanswered : child::Answer::No;
    home.people.push_back(sibling);
    safety::Room room;
    room.besideSaid = true;
    const safety::BoxState box = standardBox(m_catalogue);
    return safety::admitAll({nine, &home, room, box, m_catalogue, m_today});
}

void TestCatalogueCounts::whoIsInTheRoomDecidesAsCounted_data()
{
    QTest::addColumn<bool>("mouther");
    QTest::addColumn<QString>("numbers");
    // Source: activities.md section 5, the two lines "may be offered with ...", copied by hand.
    QTest::newRow("a mouther in the room")
        << true
        << "A01 A02 A03 A04 A05 A06 A07 A08 A09 A10 A11 A12 A14 A15 A16 A19 A20 A21 A26 A30 A32 "
           "A33 A34 A35 A36 A38 A45 A48 A50 A51 A52 A53 A60 A63 A65 A69 A71 A75 A79";
    QTest::newRow("an under-three who no longer mouths")
        << false
        << "A01 A02 A03 A04 A05 A06 A07 A08 A09 A10 A11 A12 A13 A14 A15 A16 A17 A19 A20 A21 A26 "
           "A30 A32 A33 A34 A35 A36 A38 A45 A47 A48 A50 A51 A52 A53 A60 A63 A65 A69 A71 A75 A79";
}

void TestCatalogueCounts::whoIsInTheRoomDecidesAsCounted()
{
    QFETCH(bool, mouther);
    QFETCH(QString, numbers);
    QCOMPARE(numbersIn(besideASibling(mouther).admitted), numbers);
}

/// HM-01 is no tag, so section 5 does not count it: where the tin itself would come, another one
/// does.
void TestCatalogueCounts::besideThoseCountsTheTinIsAnother()
{
    std::set<QString> another;
    for (const safety::Admitted &form : besideASibling(true).admitted) {
        const bool tin = std::ranges::any_of(
            form.activity().items, [](const ItemUse &use) { return use.item == ItemId{"tin"}; });
        if (tin) {
            QVERIFY2(!form.swaps().empty(), form.activity().id.value.c_str());
            another.insert(QString::fromStdString(form.activity().entry));
        }
    }
    QCOMPARE(shown(another), QString("A02 A05 A19 A30"));
}

void TestCatalogueCounts::anUnknownChildGetsTheFiveEntries()
{
    // Source: activities.md section 5, "unknown child: floor 18, no hard tag, no TRACE, ...".
    const child::Child unknown{{"c"}, "Fin", std::nullopt, false, {}};
    const safety::Room room;
    const safety::BoxState box = standardBox(m_catalogue);
    const safety::Gated gated =
        safety::admitAll({unknown, nullptr, room, box, m_catalogue, m_today});
    QCOMPARE(numbersIn(gated.admitted), QString("A01 A03 A06 A08 A09"));
    QCOMPARE(gated.admitted.size() + gated.heldBack.size(), m_catalogue.activities().size());
}

void TestCatalogueCounts::aLatexFreeHomeGetsTheEntriesCounted()
{
    // Source: activities.md section 5, "latex-free without any swap": 72 of 80, all but these.
    const child::Child nine{{"c"}, "Anya", child::ageFromMonths(108, m_today), false, {}};
    child::HomeSheet home;
    home.avoidances = {
        child::Answer::Yes, child::Answer::No, child::Answer::No, child::Answer::No, {}};
    home.likesTouch = child::Answer::Yes;
    const safety::Room room;
    const safety::BoxState box = standardBox(m_catalogue);
    const safety::Gated gated = safety::admitAll({nine, &home, room, box, m_catalogue, m_today});
    std::set<QString> held;
    for (const safety::HeldBack &one : gated.heldBack)
        held.insert(QString::fromStdString(one.activity->entry));
    QCOMPARE(shown(held), QString("A44 A57 A58 A59 A61 A72 A76 A80"));
}

QTEST_APPLESS_MAIN(TestCatalogueCounts)
#include "tst_catalogue_counts.moc"
