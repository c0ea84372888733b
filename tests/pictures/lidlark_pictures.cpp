// Every state of every screen, compared with its reference picture.
//
//   lidlark-pictures [--renew] [--only left-to-right|right-to-left]
//   lidlark-pictures --look FOLDER [--only ...] [--language en|pl|ur|pseudo]
//
// --renew keeps the pictures of today as the references; --look writes them in full size, to be
// looked at before, and with a language those of it in every look. Exit 1 where one differs, or a
// state was not reached.

#include <QCommandLineParser>
#include <QGuiApplication>
#include <QStyleHints>
#include <QTextStream>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/pictures/album.h"
#include "tests/states/wander.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

namespace {

using namespace lidlark;

/// One look of every state.
struct Look {
    const char *name;
    double textScale;
    int scheme;
    QSize size = test::Wander::firstSize;
};

/// A language, and the looks in which its states are pictured.
struct Reading {
    const char *name;
    QString language;
    std::vector<Look> looks;
};

std::vector<Reading> readings(bool everyLook)
{
    std::vector<Look> looks{{"light", 1.0, 0}, {"large", 2.0, 0}};
    // The dark one has other colours, which the audit reads, and nothing in another place.
    if (everyLook)
        looks.push_back({"dark", 1.0, 1});
    return {{"left-to-right", QStringLiteral("en"), looks},
            {"right-to-left", QStringLiteral("ur"), {{"right-to-left", 1.0, 0}}}};
}

/// For eyes alone.
Reading everyLookIn(const QString &language)
{
    return {"every look",
            language,
            {{"light", 1.0, 0},
             {"dark", 1.0, 1},
             {"contrast", 1.0, 2},
             {"large", 2.0, 0},
             {"small-large", 2.0, 0, {320, 568}},
             {"lying", 1.0, 0, {740, 360}},
             {"tablet", 1.0, 0, {768, 1024}},
             {"laptop", 1.0, 0, {1280, 800}}}};
}

class Session
{
public:
    /// @param look where pictures are written to be looked at; empty: they are compared.
    Session(pictures::Album album, bool renew, QString look)
        : m_album(std::move(album)), m_renew(renew), m_look(std::move(look))
    {
    }

    void walk(const Reading &reading)
    {
        test::Wander wander(reading.language);
        for (const test::Leg &leg : test::everyLeg()) {
            const QString failed =
                wander.walk(leg, [&](const test::Stop &stop) { picture(stop, reading); });
            if (!failed.isEmpty())
                tell(QStringLiteral("%1: %2").arg(QString::fromUtf8(leg.name), failed));
        }
    }

    int end()
    {
        if (m_renew)
            m_album.clear();
        const QStringList left = m_look.isEmpty() ? m_album.leftOver() : QStringList();
        for (const QString &name : left)
            tell(QStringLiteral("%1: a reference of nothing. Run with --renew.").arg(name));
        m_out << m_pictures << " pictures, " << m_wrong << " to look at.\n";
        return m_wrong == 0 ? 0 : 1;
    }

private:
    void picture(const test::Stop &stop, const Reading &reading)
    {
        // The ids of a new home come by chance, and with them the order of what is equally good.
        if (m_look.isEmpty() && stop.name == QLatin1String("today-new-home"))
            return;
        for (const Look &look : reading.looks) {
            test::Wander::layOut(stop, look.size, look.textScale, look.scheme);
            const QString name =
                QStringLiteral("%1/%2").arg(QString::fromUtf8(look.name), stop.name);
            ++m_pictures;
            tell(take(name, stop.window->grabWindow()));
        }
        test::Wander::layOut(stop, test::Wander::firstSize, 1.0, 0);
    }

    /// @returns what is wrong with a picture; empty: nothing.
    QString take(const QString &name, const QImage &now)
    {
        if (!m_look.isEmpty()) {
            const QString file = QDir(m_look).filePath(name + QStringLiteral(".png"));
            const bool written = QDir().mkpath(QFileInfo(file).path()) && now.save(file);
            return written ? QString() : QStringLiteral("%1: could not be written").arg(file);
        }
        if (m_renew)
            return m_album.renew(name, now) ? QString()
                                            : QStringLiteral("%1: could not be written").arg(name);
        return m_album.compare(name, now);
    }

    /// An empty line is not told.
    void tell(const QString &line)
    {
        if (line.isEmpty())
            return;
        ++m_wrong;
        m_out << line << Qt::endl;
    }

    pictures::Album m_album;
    bool m_renew;
    QString m_look;
    int m_pictures = 0;
    int m_wrong = 0;
    QTextStream m_out{stdout};
};

} // namespace

int main(int argc, char **argv)
{
    QGuiApplication app(argc, argv);
    QGuiApplication::styleHints()->setCursorFlashTime(
        0); // in the dark half of its blink it is gone
    test::wakeAccessibleTree();
    test::Hand::beQuick();
    QCommandLineParser parser;
    parser.addHelpOption();
    parser.addOption({QStringLiteral("renew"), QStringLiteral("keep today's as the references")});
    parser.addOption({QStringLiteral("only"), QStringLiteral("left-to-right or right-to-left"),
                      QStringLiteral("reading")});
    parser.addOption({QStringLiteral("look"), QStringLiteral("only write them in full size"),
                      QStringLiteral("folder")});
    parser.addOption(
        {QStringLiteral("language"), QStringLiteral("to look at"), QStringLiteral("code")});
    parser.process(app);
    const QString language = parser.value(QStringLiteral("language"));
    if (!language.isEmpty() && parser.value(QStringLiteral("look")).isEmpty())
        parser.showHelp(2);
    const pictures::Album album(QDir(QStringLiteral(LIDLARK_REFERENCES)),
                                QDir(QStringLiteral(LIDLARK_DIFFERENCES)));
    const QString look = parser.value(QStringLiteral("look"));
    Session session(album, parser.isSet(QStringLiteral("renew")),
                    look.isEmpty() ? QString() : QDir(look).absolutePath());
    const QString only = parser.value(QStringLiteral("only"));
    const bool everyLook =
        parser.isSet(QStringLiteral("renew")) || qEnvironmentVariableIsSet("LIDLARK_LONG");
    const auto wanted =
        language.isEmpty() ? readings(everyLook) : std::vector{everyLookIn(language)};
    for (const Reading &reading : wanted) {
        if (only.isEmpty() || only == QString::fromUtf8(reading.name))
            session.walk(reading);
    }
    return session.end();
}
