#include <QtTest>

#include "core/usecase/box_notes.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/restock.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// Guards what the notebook says of the box beside the plays.
class TestBoxNotes : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_ruth;

    std::vector<usecase::BoxNote> notes()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        const auto family = usecase::loadFamily(workplace, "Fin");
        return *usecase::boxNotesOf(workplace, *family, *dayFrom({2027, 1, 1}));
    }

private slots:
    void init()
    {
        auto morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        QVERIFY(m_ruth->meet(*morven) > 0);
    }

    void aFullCountIsOneNoteAndACountOfOneItemNamesIt()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(
            usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 6}, {{"pegs"}, 5}, {{"bands"}, 6}})
                .ok());
        QCOMPARE(notes().size(), std::size_t{1});
        QVERIFY(notes().front().act == box::Act::Counted);
        QVERIFY(notes().front().item.empty());
        m_ruth->clock.moveTo(islandTime(12, 18, 0));
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 6}}).ok());
        QCOMPARE(notes().size(), std::size_t{2});
        QCOMPARE(notes().front().item.value, std::string("eyes")); // newest first
    }

    void whatCameAndWhatWentAreNotesOfTheirOwn()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::countIn(workplace, "Fin", {}, {"eyes"}, 2).ok());
        m_ruth->clock.moveTo(islandTime(11, 18, 20));
        using box::ExceptionKind;
        for (int i = 0; i < 2; ++i)
            QVERIFY(
                usecase::noteGone(workplace, {"Fin", {}, {"eyes"}}, ExceptionKind::Broken, 1).ok());
        QVERIFY(
            usecase::noteGone(workplace, {"Fin", {}, {"pegs"}}, ExceptionKind::StillInUse, 1).ok());
        QVERIFY(usecase::noteBackAgain(workplace, {"Fin", {}, {"pegs"}}, 1).ok());
        const auto all = notes();
        QCOMPARE(all.size(), std::size_t{4}); // back again is no note: nothing has changed
        QVERIFY(all.back().act == box::Act::CountedIn);
        QCOMPARE(all.back().pieces, 2);
        QVERIFY(all[1].act == box::Act::Gone);
    }
};

QTEST_APPLESS_MAIN(TestBoxNotes)
#include "tst_box_notes.moc"
