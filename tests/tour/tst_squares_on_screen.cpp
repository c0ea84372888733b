#include <QtTest>

#include <QPainter>
#include <QTemporaryDir>
#include <QVideoFrame>
#include <QVideoSink>
#include <QtQml/qqmlextensionplugin.h>

#include "core/sync/invitation.h"
#include "mobile/platform/qr/qr_picture.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

namespace {

QString ourCode()
{
    const sync::JoinSecret secret({9, 8, 7, 6, 5, 4, 3, 2, 1, 0});
    return QString::fromStdString(*sync::qrTextOf({secret, "https://dav.example/crew/"}));
}

QImage pictureWith(const QString &code)
{
    QImage scene(640, 480, QImage::Format_RGB32);
    scene.fill(QColor(214, 206, 190));
    QPainter(&scene).drawImage(170, 90, mobile::qrPicture(code, 6));
    return scene;
}

QVideoFrame frameWith(const QString &code)
{
    const QImage scene = pictureWith(code);
    QVideoFrame frame(QVideoFrameFormat(scene.size(), QVideoFrameFormat::Format_BGRX8888));
    if (frame.map(QVideoFrame::WriteOnly)) {
        QImage paper(frame.bits(0), scene.width(), scene.height(), frame.bytesPerLine(0),
                     QImage::Format_RGB32);
        QPainter(&paper).drawImage(0, 0, scene);
        frame.unmap();
    }
    return frame;
}

} // namespace

/// Guards that squares are read on the real page, before a camera and in a picture, and that a
/// phone without a camera has all other ways. Offscreen no camera is looked for: what one shows is
/// put where it would be.
class TestSquaresOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] QByteArray page() const { return m_app->hand().words().join(u'|').toUtf8(); }
    [[nodiscard]] QObject *named(const char *name) const
    {
        return m_app->window->findChild<QObject *>(text(name));
    }
    bool tap(const char *name) { return m_app->hand().tap(text(name)); }
    /// The offer is loaded after the page, which does not wait for it.
    void waitForTheOffer() { QTRY_VERIFY(named("cameraOffer") != nullptr); }
    void pretendACamera()
    {
        waitForTheOffer();
        QVERIFY(named("cameraOffer")->setProperty("there", true));
        Hand::settle();
    }
    /// As a camera does, until `words` can be read on the page.
    bool showUntil(const QString &code, const char *words)
    {
        for (int shown = 0; shown < 500; ++shown) {
            if (QObject *output = named("cameraShows"))
                output->property("videoSink").value<QVideoSink *>()->setVideoFrame(frameWith(code));
            QTest::qWait(10);
            if (m_app->hand().reads(text(words)))
                return true;
        }
        return false;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        QVERIFY(m_folder.isValid());
    }
    void init()
    {
        m_app = std::make_unique<OpenApp>(m_folder.filePath(text(QTest::currentTestFunction())),
                                          mondayEvening);
        QVERIFY(named("cameraOffer") == nullptr); // nothing of a camera at the start
        QVERIFY2(tap("I have a code"), page().constData());
    }
    void cleanup() { m_app.reset(); }

    void withoutACameraItIsNotOffered()
    {
        waitForTheOffer();
        Hand::settle();
        QVERIFY(!named("cameraOffer")->property("there").toBool());
        QVERIFY2(!m_app->hand().reads(text("with the camera")), page().constData());
        QVERIFY(m_app->hand().reads(text("The nine words on the other phone")));
        QVERIFY(m_app->hand().reads(text("Read a picture of the squares")));
    }

    void oursIsReadAndTheCameraGoesOff()
    {
        pretendACamera();
        QVERIFY(named("cameraShows") == nullptr); // not before the tap
        QVERIFY2(tap("Read the squares with the camera"), page().constData());
        QVERIFY(named("cameraShows") != nullptr);
        QVERIFY2(m_app->hand().reads(text("No picture is kept")), page().constData());
        QVERIFY2(showUntil(text("https://example.org/"), "These squares say something else"),
                 page().constData());
        QVERIFY2(showUntil(ourCode(), "The code was read by the camera"), page().constData());
        QTRY_VERIFY(named("cameraShows") == nullptr);
        QVERIFY2(tap("Go on"), page().constData());
        QVERIFY2(m_app->hand().reads(text("Where do the phones meet?")), page().constData());
        const QObject *address = named("placeAddress");
        QVERIFY(address != nullptr);
        QCOMPARE(address->property("text").toString(), text("https://dav.example/crew/"));
    }

    /// By the slip, by the sign at the top, and by the key.
    void leavingThePageSwitchesItOff()
    {
        pretendACamera();
        for (const char *way : {"Use words instead", "One page back", ""}) {
            QVERIFY2(tap("Read the squares with the camera"), page().constData());
            QVERIFY2(named("cameraShows") != nullptr, way);
            if (*way != '\0')
                QVERIFY2(tap(way), page().constData());
            else
                QTest::keyClick(m_app->window, Qt::Key_Escape);
            QTRY_VERIFY2(named("cameraShows") == nullptr, way);
            QVERIFY2(m_app->hand().reads(text("The nine words on the other phone")),
                     page().constData());
        }
        QVERIFY2(!m_app->hand().reads(text("was read")), page().constData());
    }

    /// Refused, taken by another app, or pulled out since.
    void aCameraThatShowsNothingIsSaid()
    {
        pretendACamera();
        QVERIFY(tap("Read the squares with the camera"));
        QTRY_VERIFY2(m_app->hand().reads(text("The camera shows nothing")), page().constData());
        QVERIFY(tap("Use words instead"));
        QVERIFY(m_app->hand().reads(text("Read a picture of the squares")));
    }

    void aPictureIsRead()
    {
        const QString file = m_folder.filePath(QStringLiteral("squares 1.png"));
        QVERIFY(pictureWith(ourCode()).save(file));
        const QString other = m_folder.filePath(QStringLiteral("other.png"));
        QVERIFY(pictureWith(QStringLiteral("https://example.org/")).save(other));
        QVERIFY(tap("Read a picture of the squares"));
        QVERIFY(m_app->hand().write(text("Where the picture lies"), other));
        QVERIFY(tap("Read this picture"));
        QVERIFY2(m_app->hand().reads(text("No code can be read")), page().constData());
        named("pictureFile")->setProperty("text", QString());
        QVERIFY(m_app->hand().write(text("Where the picture lies"), file));
        QVERIFY(tap("Read this picture"));
        QVERIFY2(m_app->hand().reads(text("The code was read from the picture")),
                 page().constData());
        QVERIFY(!m_app->hand().reads(text("No code can be read")));
    }
};

QTEST_MAIN(TestSquaresOnScreen)
#include "tst_squares_on_screen.moc"
