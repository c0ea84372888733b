#include <QtTest>

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include "tests/support/dav_server.h"

#include <filesystem>
#include <memory>

namespace {

struct Answer {
    int status = -1;
    QJsonObject json;
    QString problem;
};

constexpr auto monday = "2027-01-11T18:00:00Z";

Answer run(const QStringList &arguments)
{
    QProcess process;
    process.start(qEnvironmentVariable("LIDLARK_CLI"), arguments);
    process.closeWriteChannel();
    process.waitForFinished(60'000);
    return {process.exitCode(), QJsonDocument::fromJson(process.readAllStandardOutput()).object(),
            QString::fromUtf8(process.readAllStandardError())};
}

QJsonObject firstBox(const Answer &answer)
{
    return answer.json["boxes"].toArray().at(0).toObject();
}

/// The careful count of an item.
int lowOf(const Answer &box, const QString &id)
{
    const QJsonArray items = box.json["items"].toArray();
    for (const auto &item : items) {
        if (item.toObject()["id"].toString() == id)
            return item.toObject()["low"].toInt();
    }
    return -1;
}

} // namespace

/// Guards `join`, `sync` and `erase`, over a folder, a file and a real WebDAV server: shapes, exit
/// 0 / 1 / 2, one plain sentence for each mistake, and that a mistake changes nothing.
class TestCrewCommands : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_island;   ///< Ruth's store, written once; each test has a copy.
    QTemporaryDir m_clinic;   ///< Morven's.
    QTemporaryDir m_together; ///< The same, and Aunt's, let in over a folder.
    QString m_aunt;           ///< Her device there.
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<lidlark::test::DavServer> m_server;
    int m_story = 0;

    [[nodiscard]] QString path(const QString &name) const { return m_folder->filePath(name); }
    [[nodiscard]] QStringList folder() const { return {"--to", path("shared")}; }
    /// The server's folder of this test, with what opens it.
    [[nodiscard]] QStringList server(const QString &password = {}) const
    {
        const auto address = m_server->address();
        QFile file(path("password"));
        if (file.open(QIODevice::WriteOnly))
            file.write(password.isEmpty() ? QByteArray::fromStdString(address.password)
                                          : password.toUtf8());
        const QString url = QString::fromStdString(address.url) + "crew" + QString::number(m_story);
        return {"--to",
                url + "/",
                "--user",
                QString::fromStdString(address.user),
                "--ca-file",
                QString::fromStdString(address.caFile),
                "--password-file",
                path("password")};
    }
    [[nodiscard]] Answer on(const QString &store, const QStringList &arguments,
                            const char *clock = monday) const
    {
        return run(arguments + QStringList{"--json", "--clock", clock, "--store", path(store)});
    }
    [[nodiscard]] Answer ruths(const QStringList &arguments, const char *clock = monday) const
    {
        return on("fin-ruth.lidlark", arguments, clock);
    }
    [[nodiscard]] QString newCode(const QString &role = "caregiver") const
    {
        return ruths({"join", "--make-code", "--role", role}).json["code"].toString();
    }
    [[nodiscard]] Answer typeIn(const QString &store, const QString &code,
                                const QStringList &place) const
    {
        return on(store, QStringList{"join", "--code", code, "--person", "Aunt"} + place);
    }
    /// The whole way in. @returns the new device's id.
    QString letIn(const QString &store, const QStringList &place,
                  const QString &role = "caregiver") const
    {
        const QString code = newCode(role);
        const Answer knocks = typeIn(store, code, place);
        const Answer accepts = ruths(QStringList{"join", "--accept"} + place);
        const Answer comesIn = typeIn(store, code, place);
        const bool same = knocks.json["same"].toString() == accepts.json["same"].toString();
        const bool well = knocks.status == 0 && accepts.status == 0 && comesIn.status == 0 && same;
        return well ? comesIn.json["device"].toString()
                    : knocks.problem + accepts.problem + comesIn.problem;
    }
    void holdsTogether(const QString &store) const
    {
        const Answer answer = on(store, {"verify"});
        QCOMPARE(answer.status, 0);
        QCOMPARE(answer.json["projections_match"].toBool(), true);
        QCOMPARE(answer.json["integrity"].toString(), QStringLiteral("ok"));
    }
    void says(const Answer &answer, const QString &words) const
    {
        QCOMPARE(answer.status, 1);
        QVERIFY2(answer.problem.contains(words), qPrintable(answer.problem));
        QCOMPARE(answer.problem.count('\n'), 1); // one sentence
    }
    void ruthUsesAnEyeUp() const
    {
        const Answer play =
            ruths({"play", R"({"child":"Fin","activity":"dough-forecast","author":"Ruth"})"});
        const QString id = play.json["play"].toString();
        QCOMPARE(ruths({"put-back", R"({"play":")" + id +
                                        R"(","author":"Ruth","exceptions":[)"
                                        R"({"item":"eyes","kind":"used-up","count":1}]})"})
                     .status,
                 0);
    }
    [[nodiscard]] QByteArray bytesOf(const QString &name) const
    {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void write(const QString &name, const QByteArray &bytes) const
    {
        QFile file(path(name));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    /// A copy of these files, over those that are here.
    void startFrom(const QTemporaryDir &from) const
    {
        namespace fs = std::filesystem;
        fs::copy(from.path().toStdString(), m_folder->path().toStdString(),
                 fs::copy_options::recursive | fs::copy_options::overwrite_existing);
    }

private slots:
    void initTestCase()
    {
        QCOMPARE(run({"demo", m_island.path(), "--json"}).status, 0);
        const auto stores = QDir(m_island.path()).entryList(QDir::Files);
        QVERIFY(
            QFile::copy(m_island.filePath("morven.lidlark"), m_clinic.filePath("morven.lidlark")));
        for (const QString &name : stores) {
            if (name != "fin-ruth.lidlark")
                QFile::remove(m_island.filePath(name));
        }
        QVERIFY(QDir(m_island.path()).mkdir("shared"));
        m_folder = std::make_unique<QTemporaryDir>();
        startFrom(m_island);
        m_aunt = letIn("aunt", folder());
        QVERIFY2(!m_aunt.contains(' '), qPrintable(m_aunt));
        std::filesystem::copy(m_folder->path().toStdString(), m_together.path().toStdString(),
                              std::filesystem::copy_options::recursive |
                                  std::filesystem::copy_options::overwrite_existing);
        m_server = std::make_unique<lidlark::test::DavServer>(lidlark::test::DavKind::Apache);
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
    }
    void init()
    {
        ++m_story;
        m_folder = std::make_unique<QTemporaryDir>();
        startFrom(m_island);
    }

    void aPhoneComesInAndHoldsTheBox_data()
    {
        QTest::addColumn<bool>("overServer");
        QTest::newRow("over a folder") << false;
        QTest::newRow("over a server, with a password and a certificate") << true;
    }
    void aPhoneComesInAndHoldsTheBox()
    {
        QFETCH(bool, overServer);
        const QStringList place = overServer ? server() : folder();
        const Answer code = ruths({"join", "--make-code", "--role", "caregiver"});
        QCOMPARE(code.status, 0);
        QCOMPARE(code.json["code"].toString().split(' ').size(), 9);
        QCOMPARE(code.json["ends"].toString(), QStringLiteral("2027-01-11T18:10:00Z"));
        const Answer knocks = typeIn("aunt", code.json["code"].toString(), place);
        QCOMPARE(knocks.status, 0);
        QCOMPARE(knocks.json["waiting"].toBool(), true);
        const Answer accepts = ruths(QStringList{"join", "--accept"} + place);
        QCOMPARE(accepts.status, 0);
        QCOMPARE(accepts.json["person"].toString(), QStringLiteral("Aunt"));
        QCOMPARE(accepts.json["role"].toString(), QStringLiteral("caregiver"));
        QCOMPARE(accepts.json["same"].toString(), knocks.json["same"].toString());
        const Answer comesIn = typeIn("aunt", code.json["code"].toString(), place);
        QCOMPARE(comesIn.status, 0);
        QCOMPARE(comesIn.json["waiting"].toBool(), false);
        QCOMPARE(comesIn.json["child"].toString(), QStringLiteral("Fin"));
        QCOMPARE(comesIn.json["device"].toString(), accepts.json["joined"].toString());
        ruthUsesAnEyeUp();
        const Answer shares = ruths(QStringList{"sync"} + place);
        QCOMPARE(shares.status, 0);
        QVERIFY(firstBox(shares)["shared"].toInt() > 0);
        QCOMPARE(firstBox(shares)["waiting"].toInt(), 0);
        const Answer takes = on("aunt", QStringList{"sync"} + place);
        QVERIFY(firstBox(takes)["received"].toInt() > 0);
        QCOMPARE(lowOf(on("aunt", {"box"}), "eyes"), lowOf(ruths({"box"}), "eyes"));
        QVERIFY(on("aunt", {"box"}).json["items"] == ruths({"box"}).json["items"]);
        holdsTogether("aunt");
        holdsTogether("fin-ruth.lidlark");
    }

    /// job.md T4: who packs too has the therapist's table, and no child's box.
    void whoPacksTooComesToTheTable()
    {
        startFrom(m_clinic);
        const QString table = "morven.lidlark";
        const QStringList forPacker{"join", "--make-code", "--role", "therapist", "--clinic"};
        const QString code = on(table, forPacker).json["code"].toString();
        QCOMPARE(code.split(' ').size(), 9);
        QCOMPARE(typeIn("callum", code, folder()).json["waiting"].toBool(), true);
        QCOMPARE(on(table, QStringList{"join", "--accept", "--clinic"} + folder()).status, 0);
        const Answer comesIn = typeIn("callum", code, folder());
        QCOMPARE(comesIn.status, 0);
        QCOMPARE(comesIn.json["clinic"].toBool(), true);
        QVERIFY(!comesIn.json.contains("child"));
        const Answer shares = on("callum", QStringList{"sync"} + folder());
        QCOMPARE(shares.status, 0);
        QCOMPARE(firstBox(shares)["box"].toString(), QStringLiteral("clinic"));
        QCOMPARE(on(table, QStringList{"sync", "--clinic", "--hand-over", path("file")}).status, 0);
        const Answer takes = on("callum", {"sync", "--clinic", "--take-in", path("file")});
        QCOMPARE(takes.status, 0);
        holdsTogether("callum");
        holdsTogether(table);
        says(on(table, {"join", "--make-code", "--role", "parent", "--home", "h-fin", "--clinic"}),
             "only who packs");
        says(on(table, forPacker + QStringList{"--child", "Fin"}), "--clinic");
        says(ruths(forPacker), "Only the therapist's phone");
    }

    void aGuestGetsTheBoxForAWeekAndNoHistory()
    {
        ruthUsesAnEyeUp();
        QVERIFY(!letIn("aunt", folder(), "guest").isEmpty());
        QCOMPARE(on("aunt", {"menu", "--child", "Fin"}).json["offers"].toArray().size(), 3);
        QVERIFY(on("aunt", {"notebook"}).json["plays"].toArray().isEmpty());
        QCOMPARE(lowOf(on("aunt", {"box"}), "eyes"), lowOf(ruths({"box"}), "eyes"));
        says(on("aunt", {"join", "--make-code", "--role", "parent", "--home", "h-fin"}),
             "Only a phone of a parent");
        const QString play = R"({"child":"Fin","activity":"dough-forecast"})";
        QCOMPARE(on("aunt", {"play", play}, "2027-01-17T18:00:00Z").status, 0);
        says(on("aunt", {"play", play}, "2027-01-18T18:00:00Z"), "Your time with this box ended");
        says(ruths({"join", "--make-code", "--role", "guest", "--until", "2027-01-18"}),
             "seven days");
        holdsTogether("aunt");
    }

    void wrongWordsAreNamed()
    {
        QStringList words = newCode().split(' ');
        const QString first = words[0];
        words[0] = "xylophono";
        says(typeIn("aunt", words.join(' '), folder()), "\"xylophono\" is not a word");
        words[0] = first;
        std::swap(words[3], words[4]);
        says(typeIn("aunt", words.join(' '), folder()), "one of them is another");
        says(typeIn("aunt", words.mid(0, 3).join(' '), folder()), "only 3");
        QVERIFY(!QFile::exists(path("aunt"))); // nothing was begun
    }

    void aCodeIsGoodOnce()
    {
        const QString code = newCode();
        QCOMPARE(typeIn("aunt", code, folder()).status, 0);
        says(typeIn("stranger", code, folder()), "Another phone has used this code");
        QCOMPARE(ruths(QStringList{"join", "--accept"} + folder()).status, 0);
        says(typeIn("stranger", code, folder()), "Another phone has used this code");
        QCOMPARE(typeIn("aunt", code, folder()).json["waiting"].toBool(), false);
        QCOMPARE(typeIn("late", code, folder()).json["waiting"].toBool(), true); // for ever
        says(ruths(QStringList{"join", "--accept"} + folder()), "No code is waiting");
        says(on("stranger", QStringList{"sync"} + folder()), "cannot find a household");
    }

    void acceptingWhenNobodyKnocksOrNoCodeWaits()
    {
        const QStringList accept = QStringList{"join", "--accept"} + folder();
        says(ruths(accept), "No code is waiting");
        QVERIFY(!newCode().isEmpty());
        says(ruths(accept), "Nobody has used the code yet");
        says(ruths(accept, "2027-01-11T18:10:00Z"), "No code is waiting");
    }

    void whoIsRemovedIsOut()
    {
        startFrom(m_together);
        const QString device = m_aunt;
        says(ruths({"join", "--remove", "nobody"}), "cannot find");
        says(on("aunt", {"join", "--remove", device, "--child", "Finn"}), "cannot find");
        const Answer removed = ruths({"join", "--remove", device});
        QCOMPARE(removed.status, 0);
        QCOMPARE(removed.json["removed"].toString(), device);
        says(ruths(QStringList{"sync"} + folder()), "Aunt is not in the crew any more");
        says(on("aunt", QStringList{"sync"} + folder()), "not in the crew any more");
        ruthUsesAnEyeUp();
        // Once it is told that the tablet has shared more than was accepted of it.
        (void)ruths(QStringList{"sync"} + folder());
        QCOMPARE(ruths(QStringList{"sync"} + folder()).status, 0);
        const int eyes = lowOf(on("aunt", {"box"}), "eyes");
        (void)on("aunt", QStringList{"sync"} + folder());
        QCOMPARE(lowOf(on("aunt", {"box"}), "eyes"), eyes);
        holdsTogether("aunt");
    }

    void aFileHandedOver()
    {
        startFrom(m_together);
        ruthUsesAnEyeUp();
        const Answer handed = ruths({"sync", "--hand-over", path("handed")});
        QCOMPARE(handed.status, 0);
        QVERIFY(handed.json["segments"].toInt() > 0);
        const QByteArray good = bytesOf("handed");
        QByteArray torn = good;
        torn[torn.size() / 2] = static_cast<char>(torn[torn.size() / 2] ^ 1);
        const int eyes = lowOf(on("aunt", {"box"}), "eyes");
        for (const auto &[bytes, words] :
             {std::pair{torn, "damaged or not all there"},
              std::pair{good.left(good.size() / 3), "damaged or not all there"},
              std::pair{QByteArray("a shopping list"), "no file that Lidlark hands over"},
              std::pair{QByteArray(), "no file that Lidlark hands over"}}) {
            write("other", bytes);
            says(on("aunt", {"sync", "--take-in", path("other")}), words);
        }
        QCOMPARE(lowOf(on("aunt", {"box"}), "eyes"), eyes);
        says(on("aunt", {"sync", "--take-in", path("missing")}), "cannot find");
        says(ruths({"sync", "--hand-over", path("no/such/folder")}), "could not save");
        const Answer taken = on("aunt", {"sync", "--take-in", path("handed")});
        QCOMPARE(taken.status, 0);
        QVERIFY(firstBox(taken)["received"].toInt() > 0);
        QCOMPARE(lowOf(on("aunt", {"box"}), "eyes"), eyes - 1);
        QCOMPARE(firstBox(on("aunt", {"sync", "--take-in", path("handed")}))["received"].toInt(),
                 0);
        holdsTogether("aunt");
    }

    void aPlaceThatIsNone()
    {
        QVERIFY(!newCode().isEmpty());
        says(ruths({"sync"}), "--to: where?");
        says(ruths({"sync", "--to", path("nowhere")}), "cannot find the folder");
        says(ruths({"sync", "--to", "http://family.example/crew/", "--user", "ruth"}),
             "http would show the password");
        says(ruths({"sync", "--to", "gopher://family.example/"}), "begins with https://");
        says(ruths({"sync", "--to", "https://"}), "not an address");
        says(ruths(QStringList{"sync", "--to", "https://127.0.0.1:1/", "--password-file",
                               path("missing")}),
             "cannot find");
        says(ruths({"sync", "--to", "https://127.0.0.1:1/"}), "cannot be reached now");
        holdsTogether("fin-ruth.lidlark");
    }

    void aServerThatDoesNotLetIn()
    {
        QVERIFY(!newCode().isEmpty());
        const Answer refused = ruths(QStringList{"sync"} + server("guessed"));
        says(refused, "does not let this phone in");
        QVERIFY(firstBox(refused)["trouble"].isString());
        QStringList unknown = server();
        unknown.removeAt(unknown.indexOf("--ca-file") + 1);
        unknown.removeAt(unknown.indexOf("--ca-file"));
        says(ruths(QStringList{"sync"} + unknown), "cannot show that it is the one");
        m_server->kill();
        says(ruths(QStringList{"sync"} + server()), "cannot be reached now");
        QVERIFY2(m_server->start(), qPrintable(m_server->problem()));
        const Answer well = ruths(QStringList{"sync"} + server());
        QCOMPARE(well.status, 0);
        QVERIFY(firstBox(well)["shared"].toInt() > 0);
    }

    /// A store that was set back to a backup writes nothing under its old name, and can be let in
    /// anew; what it had not shared comes along.
    void aStoreThatWasSetBackIsLetInAnew()
    {
        startFrom(m_together);
        const QString before = m_aunt;
        QVERIFY(QFile::copy(path("aunt"), path("backup")));
        QCOMPARE(on("aunt", {"count", R"({"child":"Fin","counts":{"pegs":5}})"}).status, 0);
        QCOMPARE(on("aunt", QStringList{"sync"} + folder()).status, 0);
        QVERIFY(QFile::remove(path("aunt")));
        QVERIFY(QFile::copy(path("backup"), path("aunt")));
        says(on("aunt", QStringList{"sync"} + folder()), "set back to an older copy");
        says(on("aunt", {"join", "--make-code", "--role", "guest"}), "set back to an older copy");
        QCOMPARE(on("aunt", {"count", R"({"child":"Fin","counts":{"card":0}})"}).status, 0);
        const QString after = letIn("aunt", folder());
        QVERIFY2(!after.isEmpty() && !after.contains(' '), qPrintable(after));
        QVERIFY(after != before);
        for (int time = 0; time < 2; ++time) {
            QCOMPARE(on("aunt", QStringList{"sync"} + folder()).status, 0);
            QCOMPARE(ruths(QStringList{"sync"} + folder()).status, 0);
        }
        QCOMPARE(lowOf(ruths({"box"}), "pegs"), 5);
        QCOMPARE(lowOf(ruths({"box"}), "card"), 0);
        QVERIFY(on("aunt", {"box"}).json["items"] == ruths({"box"}).json["items"]);
        holdsTogether("aunt");
        holdsTogether("fin-ruth.lidlark");
    }

    /// A phone that drowned comes back by the words on paper, with what its home had shared.
    void aHomeComesBackByItsSheet()
    {
        startFrom(m_together);
        const Answer made = ruths({"join", "--make-sheet"});
        QCOMPARE(made.status, 0);
        const QJsonArray rows = made.json["sheet"].toArray();
        QCOMPARE(rows.size(), 2);
        const QString words = rows[0].toString() + " / " + rows[1].toString();
        ruthUsesAnEyeUp();
        QCOMPARE(ruths(QStringList{"sync"} + folder(), "2027-01-13T18:00:00Z").status, 0);
        const Answer box = ruths({"box"});
        const QStringList sheet{"join", "--person", "Ruth", "--sheet"};
        says(on("new", sheet + QStringList{rows[0].toString()} + folder()),
             "A code has nine words");
        const Answer back = on("new", sheet + QStringList{words} + folder());
        QVERIFY2(back.status == 0, qPrintable(back.problem));
        QCOMPARE(back.json["child"].toString(), QStringLiteral("Fin"));
        QVERIFY(on("new", {"box"}).json["items"] == box.json["items"]);
        QVERIFY(!on("new", {"notebook"}).json["plays"].toArray().isEmpty());
        holdsTogether("new");
    }

    /// A store that was carried to another phone, without what lies in the first one's keychain.
    void aStoreOfAnotherPhoneSharesNothing()
    {
        startFrom(m_together);
        QVERIFY(QFile::copy(path("aunt"), path("carried")));
        says(on("carried", QStringList{"sync"} + folder()), "comes from another phone");
    }

    void whatIsErasedGoesOnEveryPhoneOfTheHome()
    {
        startFrom(m_together);
        QVERIFY(!on("aunt", {"notebook"}).json["plays"].toArray().isEmpty());
        says(on("aunt", {"erase", "--what", "plays"}), "That is for the family to say");
        const Answer erased = ruths({"erase", "--what", "plays"});
        QCOMPARE(erased.status, 0);
        QVERIFY(erased.json["gone"].toInt() > 0);
        says(ruths({"erase", "--what", "plays"}), "cannot find");
        says(ruths({"erase", "--what", "plays", "--up-to", "2027-02-01"}), "a day to come");
        says(ruths({"erase", "--what", "plays", "--up-to", "soon"}), "not a day");
        QCOMPARE(ruths({"erase", "--what", "stars"}).status, 2);
        for (const char *store : {"fin-ruth.lidlark", "aunt"})
            QCOMPARE(on(store, QStringList{"sync"} + folder()).status, 0);
        QVERIFY(on("aunt", {"notebook"}).json["plays"].toArray().isEmpty());
        QVERIFY(ruths({"notebook"}).json["plays"].toArray().isEmpty());
        holdsTogether("aunt");
        holdsTogether("fin-ruth.lidlark");
    }

    void wrongUse()
    {
        QCOMPARE(ruths({"join"}).status, 2);
        QCOMPARE(ruths({"join", "--make-code", "--accept"}).status, 2);
        QCOMPARE(ruths({"erase"}).status, 2);
        QCOMPARE(ruths({"sync", "--from", "here"}).status, 2);
        says(ruths({"join", "--make-code", "--role", "queen"}), "--role");
        says(run(QStringList{"join", "--code", newCode(), "--person", "Aunt"} + folder()),
             "--store");
        says(on("aunt", QStringList{"join", "--code", newCode()} + folder()), "your name");
    }
};

QTEST_APPLESS_MAIN(TestCrewCommands)
#include "tst_crew_commands.moc"
