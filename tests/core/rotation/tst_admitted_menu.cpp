#include <QtTest>

#include "core/rotation/filters.h"
#include "core/rotation/menu.h"

#include <QDir>
#include <QFile>

using namespace lidlark;
using namespace lidlark::rotation;
using catalogue::Tag;
using checkin::Kite;

namespace {

std::vector<catalogue::SourceFile> filesIn(const QString &folder)
{
    std::vector<catalogue::SourceFile> files;
    const QDir dir(qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/assets/catalogue/" + folder);
    for (const QString &name : dir.entryList({"*.yaml"}, QDir::Files, QDir::Name)) {
        QFile file(dir.filePath(name));
        if (file.open(QIODevice::ReadOnly))
            files.push_back({name.toStdString(), file.readAll().toStdString()});
    }
    return files;
}

/// The catalogue we ship, a full standard box, and a home of one child where all is answered.
class OneHome
{
public:
    explicit OneHome(const catalogue::Catalogue &catalogue, int months)
        : m_catalogue(catalogue), child{{"skye"},
                                        "Skye",
                                        child::ageFromMonths(months, today),
                                        false,
                                        {}}
    {
        using child::Answer;
        sheet.avoidances = {Answer::No, Answer::No, Answer::No, Answer::No, {}};
        sheet.likesTouch = Answer::Yes;
        sheet.people.push_back(
            {{"skye"}, "Skye", child::PersonKind::Child, child.age, Answer::No, false, false});
        for (const catalogue::ItemKind &kind : catalogue.items()) {
            if (kind.lidCount > 0)
                box.items[kind.id] = {kind.lidCount, false};
        }
    }

    [[nodiscard]] Question question(std::optional<Kite> kite = {}) const
    {
        Question question{.child = child, .today = today};
        question.part = PartOfDay::Evening;
        question.kite = kite;
        for (const auto &[item, stock] : box.items)
            question.stock[item] = stock.low;
        return question;
    }

    [[nodiscard]] Menu menu(const Question &question) const
    {
        const safety::Room room;
        const safety::Gated gated =
            safety::admitAll({child, &sheet, room, box, m_catalogue, today});
        return chooseMenu(gated.admitted, question);
    }

private:
    const catalogue::Catalogue &m_catalogue;

public:
    Day today = *dayFrom({2027, 1, 11});
    child::Child child;
    child::HomeSheet sheet;
    safety::BoxState box;
};

} // namespace

class TestAdmittedMenu : public QObject
{
    Q_OBJECT

    catalogue::Catalogue m_catalogue;

private slots:
    void initTestCase()
    {
        m_catalogue = catalogue::load(filesIn("items"), filesIn("activities"));
        QVERIFY(!m_catalogue.activities().empty());
    }

    // Source: job.md F1 and F5 (at every age from 24 months), on the day a box arrives.
    void everyAgeFromTwoYearsHasThreeOffers()
    {
        for (int months = 24; months <= 120; ++months) {
            const OneHome home(m_catalogue, months);
            const Menu menu = home.menu(home.question());
            QCOMPARE(menu.offers.size(), std::size_t{3});
            QVERIFY(menu.proven);
        }
    }

    // Source: checkin.md 13, acceptance check 5: a whirling tap at 19:10.
    void whirlingAtTenPastSeven()
    {
        for (const int months : {36, 50, 61, 74, 100}) {
            const OneHome home(m_catalogue, months);
            Question question = home.question(Kite::Whirling);
            question.pastBedtimeHour = true;
            const Menu menu = home.menu(question);
            QVERIFY(!menu.offers.empty());
            for (const Offer &offer : menu.offers) {
                QVERIFY(offer.admitted.activity().effect != catalogue::Effect::Alerting);
                for (const Tag tag : {Tag::Sharp, Tag::Elastic, Tag::Straw, Tag::Coin})
                    QVERIFY(!offer.admitted.cautions().has(tag));
            }
        }
    }

    // Source: checkin.md 13, acceptance check 6; Mairead of job.md 4, 9 years 5 months.
    void restingForAChildWhoTiresFast()
    {
        OneHome home(m_catalogue, 113);
        home.child.energyLimited = true;
        const Menu menu = home.menu(home.question(Kite::Resting));
        QCOMPARE(menu.offers.size(), std::size_t{3});
        for (const Offer &offer : menu.offers)
            QVERIFY(offer.admitted.activity().energy != catalogue::Energy::High);
    }

    // Source: job.md scenario 9: Skye, 5 years 1 month, at the ferry terminal, without the box.
    void awayFromHomeOffersQuietPlayThatNeedsNothing()
    {
        OneHome home(m_catalogue, 61);
        home.box.here = false;
        Question question = home.question();
        question.filters.awayFromHome = true;
        const Menu menu = home.menu(question);
        QCOMPARE(menu.offers.size(), std::size_t{3});
        for (const Offer &offer : menu.offers) {
            QVERIFY(offer.admitted.activity().noBox);
            QVERIFY(isQuiet(candidateOf(offer.admitted)));
        }
    }

    // Source: safety.md HY-02 and HY-03.
    void someoneIsIllOffersNothingForMouthsOrShared()
    {
        const OneHome home(m_catalogue, 74);
        Question question = home.question();
        question.filters.someoneIsIll = true;
        const Menu menu = home.menu(question);
        QCOMPARE(menu.offers.size(), std::size_t{3});
        for (const Offer &offer : menu.offers) {
            for (const Tag tag : {Tag::Breath, Tag::Straw, Tag::Dough, Tag::Water, Tag::Foam})
                QVERIFY(!offer.admitted.cautions().has(tag));
        }
    }

    // Source: design.md 5: no two of one family, one without a table, at most one mess-2.
    void theThreeDifferInFamilyAndOneNeedsNoTable()
    {
        const OneHome home(m_catalogue, 74);
        const Menu menu = home.menu(home.question());
        std::set<catalogue::Skill> families;
        int free = 0;
        int messy = 0;
        for (const Offer &offer : menu.offers) {
            const catalogue::Activity &activity = offer.admitted.activity();
            families.insert(activity.family());
            free += activity.space != catalogue::Space::Table ? 1 : 0;
            messy += activity.mess == 2 ? 1 : 0;
            QVERIFY(!offer.why.empty());
            QVERIFY(offer.isNew);
        }
        QCOMPARE(families.size(), std::size_t{3});
        QVERIFY(free >= 1);
        QVERIFY(messy <= 1);
    }

    // Source: design.md 5, "the same three" for the same date, part, kite and room.
    void anotherDayOrPartMayTieDifferentlyButTheSameQuestionNever()
    {
        const OneHome home(m_catalogue, 74);
        const auto idsOn = [&](int later) {
            Question question = home.question();
            question.today = home.today + later;
            std::vector<std::string> ids;
            for (const Offer &offer : home.menu(question).offers)
                ids.push_back(offer.admitted.activity().id.value);
            return ids;
        };
        std::set<std::vector<std::string>> seen;
        for (int later = 0; later < 14; ++later) {
            QVERIFY(idsOn(later) == idsOn(later));
            seen.insert(idsOn(later));
        }
        QVERIFY(seen.size() > 1);
    }
};

QTEST_APPLESS_MAIN(TestAdmittedMenu)
#include "tst_admitted_menu.moc"
