#include <QtTest>

#include <QFontDatabase>
#include <QFontInfo>
#include <QGuiApplication>
#include <QRawFont>
#include <QTemporaryDir>

#include "faces.h"
#include "type_roles.h"

using namespace lidlark::design;

namespace {

QFont fontOf(bool bold, bool arabicScript)
{
    return typeStyle(ThemeChoices::Title, bold, {1.0, arabicScript}).font;
}

/// Letters that the face has no glyph for.
QString missingFrom(const QFont &font, const QString &letters)
{
    const QRawFont raw = QRawFont::fromFont(font, QFontDatabase::Any);
    QString missing;
    for (const QChar letter : letters) {
        if (!raw.supportsCharacter(letter))
            missing += letter;
    }
    return missing;
}

} // namespace

/// Guards that words are set in our faces on a device that has no face installed at all.
class TestFaces : public QObject
{
    Q_OBJECT

private slots:
    void noFaceIsInstalledHere()
    {
        QVERIFY(!QFontDatabase::hasFamily(QString::fromLatin1(latinFace)));
        QVERIFY(!QFontDatabase::hasFamily(QString::fromLatin1(naskhFace)));
    }

    void aFaceIsUnpackedOnlyWhenWordsAreSetInIt()
    {
        QCOMPARE(QFontInfo(fontOf(false, false)).family(), QString::fromLatin1(latinFace));
        QVERIFY(!QFontDatabase::hasFamily(QString::fromLatin1(naskhFace)));
        QCOMPARE(QFontInfo(fontOf(false, true)).family(), QString::fromLatin1(naskhFace));
    }

    void boldIsAFaceOfItsOwn()
    {
        for (const bool arabicScript : {false, true}) {
            QVERIFY(QFontInfo(fontOf(true, arabicScript)).bold());
            QCOMPARE(QFontInfo(fontOf(true, arabicScript)).family(),
                     QString::fromLatin1(arabicScript ? naskhFace : latinFace));
            QVERIFY(QRawFont::fromFont(fontOf(true, arabicScript)).weight() >= QFont::Bold);
            QVERIFY(!QFontInfo(fontOf(false, arabicScript)).bold());
        }
    }

    /// The alphabets: Polish, Rada Języka Polskiego's nine letters beyond the Latin ones; Urdu, the
    /// letters, digits and marks that Unicode's CLDR lists for it (both from memory).
    void everyLetterOfOurLanguagesIsThere()
    {
        QCOMPARE(missingFrom(fontOf(false, false), QStringLiteral("ąćęłńóśźżĄĆĘŁŃÓŚŹŻ")),
                 QString());
        QCOMPARE(missingFrom(fontOf(false, true),
                             QStringLiteral("اآأؤئبپتٹثجچحخدڈذرڑزژسشصضطظعغفقکگلمنںوہھءیے"
                                            "۰۱۲۳۴۵۶۷۸۹۔،؟؛")),
                 QString());
    }
};

int main(int argc, char **argv)
{
    const QTemporaryDir nothing;
    QFile config(nothing.filePath(QStringLiteral("fonts.conf")));
    if (!config.open(QIODevice::WriteOnly))
        return 1;
    config.write("<?xml version=\"1.0\"?><fontconfig><dir>" + nothing.path().toUtf8() +
                 "</dir><cachedir>" + nothing.path().toUtf8() + "</cachedir></fontconfig>");
    config.close();
    qputenv("FONTCONFIG_FILE", config.fileName().toUtf8());
    QGuiApplication app(argc, argv);
    TestFaces test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_faces.moc"
