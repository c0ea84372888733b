#include <QtTest>

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QVideoFrame>
#include <QVideoSink>
#include <QtQml/qqmlextensionplugin.h>

#include "core/sync/invitation.h"
#include "mobile/platform/qr/qr_picture.h"

#include <algorithm>
#include <memory>

Q_IMPORT_QML_PLUGIN(Lidlark_BridgePlugin)

using namespace lidlark;
using namespace lidlark::mobile;

namespace {

constexpr QSize seen(640, 480);

QString ourCode()
{
    const sync::JoinSecret secret({0, 1, 2, 3, 4, 5, 6, 7, 8, 9});
    return QString::fromStdString(*sync::qrTextOf({secret, "https://dav.example/families/1/"}));
}

/// A wall with a code on it, of this many dots a module, as a camera sees it.
QImage sceneWith(const QString &text, int modulePixels, double turned = 0)
{
    QImage scene(seen, QImage::Format_Grayscale8);
    scene.fill(230);
    const QImage code = qrPicture(text, modulePixels);
    QPainter painter(&scene);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(seen.width() / 2.0, seen.height() / 2.0);
    painter.rotate(turned);
    painter.drawImage(QPointF(-code.width() / 2.0, -code.height() / 2.0), code);
    return scene;
}

/// In so little light that white is this.
QImage dim(QImage scene, int white)
{
    for (int y = 0; y < scene.height(); ++y) {
        uchar *line = scene.scanLine(y);
        std::transform(line, line + scene.width(), line,
                       [white](uchar dot) { return static_cast<uchar>(8 + dot * white / 255); });
    }
    return scene;
}

QImage blurred(const QImage &scene)
{
    return scene.scaled(scene.size() / 2, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
        .scaled(scene.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

/// The light of @p grey in a frame of this kind; what stands beside the light is made up.
QVideoFrame frameOf(const QImage &grey, QVideoFrameFormat::PixelFormat kind)
{
    QVideoFrame frame(QVideoFrameFormat(grey.size(), kind));
    if (!frame.map(QVideoFrame::WriteOnly))
        return {};
    const bool packed =
        kind == QVideoFrameFormat::Format_YUYV || kind == QVideoFrameFormat::Format_UYVY;
    const int first = kind == QVideoFrameFormat::Format_UYVY ? 1 : 0;
    for (int plane = 0; plane < frame.planeCount(); ++plane)
        std::fill_n(frame.bits(plane), frame.mappedBytes(plane), uchar{77});
    for (int y = 0; y < grey.height(); ++y) {
        uchar *line = frame.bits(0) + qsizetype{y} * frame.bytesPerLine(0);
        for (int x = 0; x < grey.width(); ++x)
            line[first + x * (packed ? 2 : 1)] = grey.constScanLine(y)[x];
    }
    frame.unmap();
    return frame;
}

/// The same as a file of its own, which cheap cameras send. What follows it is nothing.
QVideoFrame jpegFrameOf(const QImage &grey)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QVideoFrame frame(QVideoFrameFormat(grey.size(), QVideoFrameFormat::Format_Jpeg));
    if (!buffer.open(QIODevice::WriteOnly) || !grey.save(&buffer, "JPG", 60) ||
        !frame.map(QVideoFrame::WriteOnly) || frame.mappedBytes(0) < bytes.size())
        return {};
    std::copy(bytes.cbegin(), bytes.cend(), frame.bits(0));
    frame.unmap();
    return frame;
}

/// The same in colours, as some cameras give it.
QVideoFrame colouredFrameOf(const QImage &grey)
{
    QVideoFrame frame(QVideoFrameFormat(grey.size(), QVideoFrameFormat::Format_BGRX8888));
    if (!frame.map(QVideoFrame::WriteOnly))
        return {};
    QImage paper(frame.bits(0), grey.width(), grey.height(), frame.bytesPerLine(0),
                 QImage::Format_RGB32);
    QPainter(&paper).drawImage(0, 0, grey);
    frame.unmap();
    return frame;
}

} // namespace

/// Guards that a joining code is read from what a camera shows, and nothing else is. The frames are
/// put into the sink in which a camera puts its own; the squares are libqrencode's, zxing-cpp reads
/// them (ISO/IEC 18004 in two programs that share no line).
class TestSquareReader : public QObject
{
    Q_OBJECT

private:
    QQmlEngine m_engine;
    std::unique_ptr<QObject> m_page;
    QVideoSink m_sink;
    QStringList m_read;

    [[nodiscard]] QObject *part(const char *name) const
    {
        return m_page->property(name).value<QObject *>();
    }
    [[nodiscard]] bool is(const char *property) const
    {
        return part("reader")->property(property).toBool();
    }
    /// Shows it until it was looked at, as a camera goes on showing.
    void show(const QVideoFrame &frame)
    {
        QSignalSpy ready(part("reader"), SIGNAL(readyChanged()));
        QTRY_VERIFY2(is("ready"), "it rests for ever");
        ready.clear();
        for (int shown = 0; shown < 5; ++shown) // while it looks and rests, these are let go by
            m_sink.setVideoFrame(frame);
        QVERIFY2(!ready.isEmpty(), "no look was taken");
        QTRY_VERIFY(is("ready") || !is("reading"));
    }

private slots:
    void initTestCase()
    {
        m_engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
        QQmlComponent component(&m_engine);
        component.setData("import QtQml\n"
                          "import Lidlark.Bridge\n"
                          "import Lidlark.Camera\n"
                          "QtObject {\n"
                          "    id: page\n"
                          "    property SquareReader reader: SquareReader {}\n"
                          "    property FramePictures pictures: FramePictures {\n"
                          "        wanted: page.reader.ready\n"
                          "        onPicture: picture => page.reader.look(picture)\n"
                          "    }\n"
                          "}\n",
                          {});
        m_page.reset(component.create());
        QVERIFY2(m_page, qPrintable(component.errorString()));
        part("pictures")->setProperty("sink", QVariant::fromValue(&m_sink));
        QVERIFY(connect(part("reader"), SIGNAL(read(QString)), this, SLOT(noteRead(QString))));
    }
    void init()
    {
        m_read.clear();
        part("reader")->setProperty("reading", true);
    }
    void cleanup() { part("reader")->setProperty("reading", false); }

public slots:
    void noteRead(const QString &text) { m_read << text; }

private slots:
    void oursIsRead_data()
    {
        using Kind = QVideoFrameFormat::PixelFormat;
        QTest::addColumn<QVideoFrame>("frame");
        const QImage plain = sceneWith(ourCode(), 6);
        for (const auto &[name, kind] : std::initializer_list<std::pair<const char *, Kind>>{
                 {"light alone", QVideoFrameFormat::Format_Y8},
                 {"planes", QVideoFrameFormat::Format_YUV420P},
                 {"two planes", QVideoFrameFormat::Format_NV12},
                 {"between colours", QVideoFrameFormat::Format_YUYV},
                 {"after colours", QVideoFrameFormat::Format_UYVY}})
            QTest::newRow(name) << frameOf(plain, kind);
        QTest::newRow("in colours") << colouredFrameOf(plain);
        QTest::newRow("as a JPEG") << jpegFrameOf(plain);
        const auto usual = [](const QImage &scene) {
            return frameOf(scene, QVideoFrameFormat::Format_NV12);
        };
        for (const int degrees : {17, 45, 90, 180, 200, 270, 333})
            QTest::addRow("turned by %d", degrees) << usual(sceneWith(ourCode(), 5, degrees));
        QTest::newRow("mirrored") << usual(plain.mirrored(true, false));
        QTest::newRow("dim") << usual(dim(plain, 60));
        QTest::newRow("small") << usual(sceneWith(ourCode(), 2));
        QTest::newRow("out of focus") << usual(blurred(sceneWith(ourCode(), 4)));
        QTest::newRow("dim, turned and out of focus")
            << usual(dim(blurred(sceneWith(ourCode(), 5, 25)), 90));
    }
    void oursIsRead()
    {
        QFETCH(QVideoFrame, frame);
        show(frame);
        QCOMPARE(m_read, QStringList{ourCode()});
        QVERIFY(!is("reading")); // and once only
        m_sink.setVideoFrame(frame);
        QCOMPARE(m_read.size(), 1);
    }

    void anythingElseIsNot_data()
    {
        QTest::addColumn<QImage>("scene");
        QTest::addColumn<bool>("foreign");
        QImage wall(seen, QImage::Format_Grayscale8);
        wall.fill(120);
        QTest::newRow("no code") << wall << false;
        QTest::newRow("half of ours") << sceneWith(ourCode(), 6).copy(0, 0, 320, 480) << false;
        QTest::newRow("too dark to tell") << dim(sceneWith(ourCode(), 6), 0) << false;
        QTest::newRow("an address") << sceneWith(QStringLiteral("https://example.org/"), 8) << true;
        QTest::newRow("ours, a letter less")
            << sceneWith(QStringLiteral("lidlark-join:1?secret=0011223344556677889"), 6) << true;
        QTest::newRow("of a later Lidlark")
            << sceneWith(QStringLiteral("lidlark-join:2?secret=00112233445566778899"), 6) << true;
        QTest::newRow("a place with a password in it")
            << sceneWith(QStringLiteral("lidlark-join:1?secret=00112233445566778899&place="
                                        "https%3A%2F%2Fa%3Ab%40dav.example%2F"),
                         6)
            << true;
    }
    void anythingElseIsNot()
    {
        QFETCH(QImage, scene);
        show(frameOf(scene, QVideoFrameFormat::Format_YUV420P));
        QCOMPARE(m_read, QStringList());
        QVERIFY(is("reading"));
        QTEST(is("foreign"), "foreign");
        // And the reading goes on.
        show(frameOf(sceneWith(ourCode(), 6), QVideoFrameFormat::Format_YUV420P));
        QCOMPARE(m_read, QStringList{ourCode()});
        QVERIFY(!is("foreign"));
    }

    /// Also while it looks: what it finds then is nobody's any more.
    void itStopsWhenItIsTold()
    {
        const QVideoFrame ours =
            frameOf(sceneWith(ourCode(), 6), QVideoFrameFormat::Format_YUV420P);
        QTRY_VERIFY(is("ready"));
        m_sink.setVideoFrame(ours);
        QVERIFY(!is("ready"));
        part("reader")->setProperty("reading", false);
        part("reader")->setProperty("reading", true);
        QTRY_VERIFY(is("ready")); // so it has answered
        part("reader")->setProperty("reading", false);
        m_sink.setVideoFrame(ours);
        QTest::qWait(0);
        QCOMPARE(m_read, QStringList());
        QVERIFY(!is("ready"));
    }

    /// A page that is left while a picture is being looked at.
    void itMayEndWhileItLooks()
    {
        QQmlComponent component(&m_engine);
        component.setData("import Lidlark.Bridge\nSquareReader { reading: true }", {});
        std::unique_ptr<QObject> reader(component.create());
        QVERIFY(reader);
        QVERIFY(QMetaObject::invokeMethod(reader.get(), "look",
                                          Q_ARG(QImage, sceneWith(ourCode(), 6))));
        QVERIFY(!reader->property("ready").toBool());
        reader.reset();
        QCoreApplication::processEvents();
    }

    /// Source: Linux, Documentation/userspace-api/media/v4l/open.rst: a camera is a character
    /// device /dev/videoN. Not each of those is one.
    void whereTheMachineHasNoCameraNoneIsOffered()
    {
        QQmlComponent component(&m_engine);
        component.setData("import Lidlark.Camera\nCameras {}", {});
        const std::unique_ptr<QObject> cameras(component.create());
        QVERIFY2(cameras, qPrintable(component.errorString()));
        const bool any = cameras->property("any").toBool();
        const QStringList devices =
            QDir(QStringLiteral("/dev")).entryList({QStringLiteral("video*")}, QDir::System);
        QVERIFY2(!any || !devices.isEmpty(), "a camera that the machine has not");
        if (!devices.isEmpty())
            qInfo("%s: %s", qPrintable(devices.join(u' ')), any ? "a camera" : "no camera");
    }

    /// Bytes of a camera that does not keep to its word.
    void aFrameThatCannotBeReadIsLetGoBy()
    {
        QTRY_VERIFY(is("ready"));
        m_sink.setVideoFrame(QVideoFrame());
        m_sink.setVideoFrame(
            QVideoFrame(QVideoFrameFormat({0, 0}, QVideoFrameFormat::Format_YUV420P)));
        QVERIFY(is("ready"));
        QCOMPARE(m_read, QStringList());
    }
};

QTEST_MAIN(TestSquareReader)
#include "tst_square_reader.moc"
