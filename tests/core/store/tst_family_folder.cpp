#include <QtTest>

#include <QFile>
#include <QTemporaryDir>

#include "core/store/device_repository.h"
#include "core/store/family_folder.h"

using namespace lidlark;
using namespace lidlark::store;

namespace {

void write(const std::string &file, const QByteArray &bytes)
{
    QFile opened(QString::fromStdString(file));
    QVERIFY(opened.open(QIODevice::WriteOnly));
    opened.write(bytes);
}

QByteArray contents(const std::string &file)
{
    QFile opened(QString::fromStdString(file));
    return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
}

/// A further family's file with @p bytes in it.
std::string add(FamilyFolder &folder, const QByteArray &bytes)
{
    const std::string making = *folder.making();
    write(making, bytes);
    return *folder.keep(making);
}

} // namespace

/// Guards where several families of one phone lie (design.md 1: each box is a world of its own).
class TestFamilyFolder : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<FamilyFolder> m_families;

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_families = std::make_unique<FamilyFolder>(
            m_folder->filePath(QStringLiteral("home.lidlark")).toStdString());
        write(m_families->first(), "first");
    }

    void aPhoneWithOneFamilyHasNoFolder()
    {
        QVERIFY(m_families->further().empty());
        QCOMPARE(m_families->all(), std::vector<std::string>{m_families->first()});
        QVERIFY(!QFile::exists(QString::fromStdString(m_families->first() + ".families")));
    }

    void familiesStandInTheOrderOfTheirComing()
    {
        std::vector<std::string> added;
        for (int i = 0; i < 11; ++i) // ten comes after nine, not after one
            added.push_back(add(*m_families, "x"));
        QCOMPARE(m_families->further(), added);
    }

    void whatIsBeingMadeIsSeenByNobody()
    {
        write(*m_families->making(), "half");
        QVERIFY(m_families->further().empty());
        QVERIFY(m_families->takenOff().empty());
    }

    /// The folder is the truth: a file of any name that is laid there is there.
    void aFileLaidThereByHandIsThere()
    {
        const std::string second = add(*m_families, "x");
        const std::string foreign = m_families->first() + ".families/from my old phone.lidlark";
        write(foreign, "y");
        QCOMPARE(m_families->further(), (std::vector<std::string>{foreign, second}));
    }

    void takenOffAndBroughtBack()
    {
        const std::string second = add(*m_families, "two");
        const std::string third = add(*m_families, "three");
        const std::string aside = *m_families->takeOff(second);
        QCOMPARE(m_families->further(), std::vector<std::string>{third});
        QCOMPARE(m_families->takenOff(), std::vector<std::string>{aside});
        const std::string fourth = add(*m_families, "four");
        QVERIFY(fourth != second); // its name is still spoken for
        QCOMPARE(*m_families->bringBack(aside), second);
        QCOMPARE(m_families->further(), (std::vector<std::string>{second, third, fourth}));
        QCOMPARE(contents(second), QByteArray("two"));
    }

    void theFirstOneToo()
    {
        const std::string aside = *m_families->takeOff(m_families->first());
        QVERIFY(!QFile::exists(QString::fromStdString(m_families->first())));
        write(m_families->first(), "another");
        const std::string back = *m_families->bringBack(aside);
        QCOMPARE(m_families->all(), (std::vector<std::string>{m_families->first(), back}));
        QCOMPARE(contents(back), QByteArray("first"));
    }

    /// With the copy that a migration laid beside it, and the log of a program that died.
    void forgottenIsGone()
    {
        const std::string second = add(*m_families, "two");
        const std::string third = add(*m_families, "three");
        const std::string aside = *m_families->takeOff(second);
        write(aside + ".before-4", "two, older");
        write(aside + "-wal", "log");
        write(*m_families->making(), "half");
        m_families->forgetTakenOff();
        const QDir left(QString::fromStdString(m_families->first() + ".families"));
        QCOMPARE(left.entryList(QDir::Files),
                 QStringList{QFileInfo(QString::fromStdString(third)).fileName()});
    }

    /// An old log under a name that is given again would be played into the new store.
    void noLogStaysUnderTheOldName()
    {
        write(m_families->first() + "-wal", "log of the first");
        (void)*m_families->takeOff(m_families->first());
        QVERIFY(!QFile::exists(QString::fromStdString(m_families->first() + "-wal")));
    }

    void aFolderThatCannotBeMadeIsSaid()
    {
        write(m_families->first() + ".families", "a file is in the way");
        const auto making = m_families->making();
        QVERIFY(!making.ok());
        QCOMPARE(making.error().code, ErrorCode::Unwritable);
        QVERIFY(m_families->further().empty());
    }
};

QTEST_APPLESS_MAIN(TestFamilyFolder)
#include "tst_family_folder.moc"
