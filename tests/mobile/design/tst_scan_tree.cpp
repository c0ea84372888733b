#include <QtTest/QTest>

#include <random>

#include "mobile/design/scan_tree.h"

using namespace lidlark::design;

/// A control as a switch sees one.
class Stop : public QQuickItem
{
    Q_OBJECT
    Q_PROPERTY(bool lit MEMBER m_lit)
public:
    explicit Stop(QQuickItem *parent) : QQuickItem(parent) { setActiveFocusOnTab(true); }

private:
    bool m_lit = false;
};

/// Guards what a switch walks through: every control once, in the order of the page, and never a
/// round that is too long to wait through.
class TestScanTree : public QObject
{
    Q_OBJECT

private:
    static void addStops(QQuickItem *parent, int count)
    {
        for (int i = 0; i < count; ++i)
            new Stop(parent);
    }

    /// The controls in the order in which somebody who opens every group meets them.
    static void walk(const std::vector<ScanEntry> &round, QList<QQuickItem *> &met)
    {
        QVERIFY2(round.size() <= 8, qPrintable(QString::number(round.size())));
        for (const ScanEntry &entry : round) {
            if (entry.isGroup())
                walk(openedGroup(entry), met);
            else
                met.append(entry.stops.front());
        }
    }

    static void gather(const QQuickItem *item, QList<QQuickItem *> &stops)
    {
        const QList<QQuickItem *> children = item->childItems();
        for (QQuickItem *child : children) {
            if (isScanStop(child))
                stops.append(child);
            gather(child, stops);
        }
    }

    static void checkAllAreMet(QQuickItem &root)
    {
        QList<QQuickItem *> stops;
        gather(&root, stops);
        QList<QQuickItem *> met;
        walk(scanEntries(&root), met);
        QCOMPARE(met, stops);
    }

private slots:
    void fewControlsAreLitOneByOne()
    {
        QQuickItem root;
        addStops(&root, 3);
        auto *foot = new QQuickItem(&root);
        addStops(foot, 2);
        const std::vector<ScanEntry> round = scanEntries(&root);
        QCOMPARE(round.size(), 5U);
        for (const ScanEntry &entry : round)
            QVERIFY(!entry.isGroup());
    }

    void whatLiesTogetherIsOneGroup()
    {
        QQuickItem root;
        auto *rows = new QQuickItem(&root);
        addStops(rows, 6);
        auto *chips = new QQuickItem(&root);
        addStops(chips, 5);
        const std::vector<ScanEntry> round = scanEntries(&root);
        QCOMPARE(round.size(), 7U); // the larger one opened, the other would make it too long
        QVERIFY(round.back().isGroup());
        QCOMPARE(round.back().stops.size(), 5U);
    }

    void aLongListIsCutIntoGroups()
    {
        for (const int count : {9, 20, 80, 300}) {
            QQuickItem root;
            addStops(&root, count);
            checkAllAreMet(root);
        }
    }

    void whatCannotBePressedIsPassedOver()
    {
        QQuickItem root;
        addStops(&root, 4);
        root.childItems().at(1)->setEnabled(false);
        root.childItems().at(2)->setVisible(false);
        QCOMPARE(scanEntries(&root).size(), 2U);
        QVERIFY(scanEntries(nullptr).empty());
        QQuickItem empty;
        QVERIFY(scanEntries(&empty).empty());
    }

    void anyPageIsWalkedWhole()
    {
        std::mt19937 random(20270111);
        for (int page = 0; page < 200; ++page) {
            QQuickItem root;
            QList<QQuickItem *> holders{&root};
            const auto anyHolder = [&] {
                return holders.at(qsizetype(random() % size_t(holders.size())));
            };
            for (int i = 0, items = int(random() % 60); i < items; ++i) {
                if (random() % 3 == 0)
                    holders.append(new QQuickItem(anyHolder()));
                else
                    new Stop(anyHolder());
            }
            checkAllAreMet(root);
        }
    }
};

QTEST_MAIN(TestScanTree)
#include "tst_scan_tree.moc"
