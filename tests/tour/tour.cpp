// One whole evening on the real screens: kite, menu, play, put-back with an exception, box.
//
//   lidlark-tour FOLDER [--other-ways] [--size 320x568] [--text-scale 2] [--scheme dark]
//   [--right-to-left] [--every-page [--language ur]] [--aloud]
//
// With --other-ways: what an ordinary evening does not show. With --every-page: each page once, in
// any language. All leave NN-name.png and account.txt in FOLDER: what is wrong with a page, or with
// --aloud what a screen reader says of it. Exit 1 where the evening could not be walked.

#include <QCommandLineParser>
#include <QDir>
#include <QGuiApplication>
#include <QTextStream>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/every_page.h"
#include "tests/tour/other_ways.h"
#include "tests/tour/page_hearing.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

namespace {

using lidlark::test::PhoneInHand;

void describe(QCommandLineParser &parser)
{
    parser.addHelpOption();
    parser.addPositionalArgument(QStringLiteral("folder"), QStringLiteral("emptied, then filled"));
    parser.addOption({QStringLiteral("size"), QStringLiteral("of the screen"),
                      QStringLiteral("WxH"), QStringLiteral("360x740")});
    parser.addOption({QStringLiteral("text-scale"), QStringLiteral("1 to 2"),
                      QStringLiteral("factor"), QStringLiteral("1")});
    parser.addOption({QStringLiteral("scheme"), QStringLiteral("light, dark or contrast"),
                      QStringLiteral("name"), QStringLiteral("light")});
    parser.addOption({QStringLiteral("right-to-left"), QStringLiteral("mirrored")});
    parser.addOption({QStringLiteral("every-page"), QStringLiteral("each page once")});
    parser.addOption({QStringLiteral("language"), QStringLiteral("en, pl, ur or pseudo"),
                      QStringLiteral("code")});
    parser.addOption({QStringLiteral("aloud"), QStringLiteral("what a screen reader says")});
    parser.addOption(
        {QStringLiteral("other-ways"), QStringLiteral("first run, clouds, burst, lost")});
}

std::optional<PhoneInHand> phoneFrom(const QCommandLineParser &parser)
{
    const QStringList size = parser.value(QStringLiteral("size")).split(u'x');
    const qsizetype scheme =
        QStringList{QStringLiteral("light"), QStringLiteral("dark"), QStringLiteral("contrast")}
            .indexOf(parser.value(QStringLiteral("scheme")));
    PhoneInHand phone;
    if (size.size() != 2 || scheme < 0)
        return std::nullopt;
    phone.size = {size[0].toInt(), size[1].toInt()};
    phone.scheme = static_cast<int>(scheme);
    phone.textScale = parser.value(QStringLiteral("text-scale")).toDouble();
    phone.language = parser.value(QStringLiteral("language"));
    phone.rightToLeft = parser.isSet(QStringLiteral("right-to-left"));
    if (parser.isSet(QStringLiteral("aloud")))
        phone.checks = {lidlark::test::saidAloud};
    if (phone.size.isEmpty() || *phone.textScale < 1)
        return std::nullopt;
    return phone;
}

using Walk = lidlark::test::Evening (*)(const QDir &, const PhoneInHand &);

Walk wayFrom(const QCommandLineParser &parser)
{
    if (parser.isSet(QStringLiteral("every-page")))
        return lidlark::test::openEveryPage;
    return parser.isSet(QStringLiteral("other-ways")) ? lidlark::test::walkOtherWays
                                                      : lidlark::test::walkAnEvening;
}

int walk(const QString &where, const PhoneInHand &phone, Walk way)
{
    QDir folder(where);
    folder.removeRecursively();
    if (!folder.mkpath(QStringLiteral("."))) {
        QTextStream(stderr) << "Cannot write to " << where << ".\n";
        return 1;
    }
    lidlark::test::Evening evening = way(folder, phone);
    for (const QString &finding : std::as_const(evening.findings))
        evening.text += QStringLiteral("%1\n").arg(finding);
    if (!evening.failed.isEmpty())
        evening.text += QStringLiteral("The tour stopped: %1\n").arg(evening.failed);
    QFile file(folder.filePath(QStringLiteral("account.txt")));
    if (!file.open(QIODevice::WriteOnly))
        return 1;
    file.write(evening.text.toUtf8());
    return evening.failed.isEmpty() ? 0 : 1;
}

} // namespace

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    lidlark::test::wakeAccessibleTree();
    QCommandLineParser parser;
    describe(parser);
    parser.process(app);
    const std::optional<PhoneInHand> phone = phoneFrom(parser);
    if (parser.positionalArguments().size() != 1 || !phone)
        parser.showHelp(2);
    return walk(parser.positionalArguments().constFirst(), *phone, wayFrom(parser));
}
