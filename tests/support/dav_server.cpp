#include "tests/support/dav_server.h"

#include "tests/support/dav_settings.h"
#include "tests/support/loopback.h"

#include <QFile>
#include <QProcess>

#include <pwd.h>
#include <unistd.h>

#include <chrono>
#include <thread>

namespace lidlark::test {

namespace {

constexpr auto user = "crew";
constexpr auto password = "kept by the door";

/// Whom the server runs as when root starts it: Apache will not run as root.
const passwd *servant()
{
    return ::geteuid() == 0 ? ::getpwnam("www-data") : nullptr;
}

void give(const QString &path, const passwd *to)
{
    if (to != nullptr && ::chown(qPrintable(path), to->pw_uid, to->pw_gid) != 0)
        qFatal("cannot give %s to %s", qPrintable(path), to->pw_name);
}

void write(const QString &path, const QString &text)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(text.toUtf8()) < 0)
        qFatal("cannot write %s", qPrintable(path));
    file.setPermissions(QFile::ReadOwner | QFile::WriteOwner | QFile::ReadOther);
}

/// A namespace of mounts is root's to have, or of a user who is root in a namespace of users.
QStringList ownMounts()
{
    QStringList command{"unshare", "--mount"};
    if (::geteuid() != 0)
        command << "--map-root-user";
    return command;
}

/// From inside ownMounts(): no longer as root, whether that was the machine's or the namespace's.
QStringList asServant()
{
    if (const passwd *to = servant())
        return {"setpriv", "--reuid", to->pw_name, "--regid", to->pw_name, "--clear-groups"};
    return {"unshare", "--user", "--map-user=1000", "--map-group=1000", "setpriv"};
}

} // namespace

DavServer::DavServer(DavKind kind, DavSetup setup) : m_kind(kind), m_setup(setup)
{
    if (kind == DavKind::Apache)
        m_authority.emplace(QDir(m_folder.path()));
    const passwd *to = servant();
    QDir(m_folder.path()).mkpath("files/dav");
    for (const QString &name : {QString(), QString("files"), QString("files/dav")})
        give(path(name), to);
    write(path("passwords"), passwordLine(user, password) + "\n");
}

void DavServer::writeSettings() const
{
    DavSettings settings{m_folder.path(), m_port, m_plainPort, {}};
    if (m_authority) {
        settings.certificate = m_authority->sign(m_setup.certificate);
        give(settings.certificate.certificate, servant());
        give(settings.certificate.key, servant());
    }
    write(path("settings"),
          m_kind == DavKind::Apache ? apacheSettings(settings) : lighttpdSettings(settings));
}

std::vector<std::string> DavServer::command() const
{
    QStringList command;
    if (m_kind == DavKind::Apache) // -X: one process, which dies as one
        command = {"/usr/sbin/apache2", "-X", "-f", path("settings")};
    else
        command = {"/usr/sbin/lighttpd", "-D", "-f", path("settings")};
    if (m_setup.diskKilobytes > 0) {
        const QString mount = QString("mount -t tmpfs -o size=%1k,mode=0777 lidlark '%2' && "
                                      "mkdir -m 0777 '%2/dav' && exec \"$@\"")
                                  .arg(m_setup.diskKilobytes)
                                  .arg(path("files"));
        command = ownMounts() + QStringList{"sh", "-c", mount, "sh"} + asServant() +
                  QStringList{"--pdeathsig", "KILL"} + command;
    }
    std::vector<std::string> words;
    for (const QString &word : std::as_const(command))
        words.push_back(word.toStdString());
    return words;
}

bool DavServer::start()
{
    if (m_plainPort != 0)
        return startOnPorts();
    for (int tries = 0; tries < 3; ++tries) { // somebody may be quicker to take a free port
        m_port = freePort();
        m_plainPort = freePort();
        writeSettings();
        if (startOnPorts())
            return true;
    }
    return false;
}

bool DavServer::startOnPorts()
{
    QFile::remove(path("pid"));
    const passwd *to = servant();
    const bool isMounted = m_setup.diskKilobytes > 0; // which takes root, who then becomes another
    const RunAs as = to != nullptr && !isMounted ? RunAs{to->pw_uid, to->pw_gid} : RunAs{};
    if (!m_process.start(command(), path("output").toStdString(), as))
        return false;
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(20);
    while (m_process.isRunning() && std::chrono::steady_clock::now() < end) {
        // Both write it once they listen.
        if (QFile::exists(path("pid")) && Socket::to(m_plainPort).isOpen())
            return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(3));
    }
    m_process.end();
    return false;
}

sync::ServerAddress DavServer::address() const
{
    sync::ServerAddress address;
    if (m_kind == DavKind::Apache) {
        address.url = "https://localhost:" + std::to_string(m_port) + "/dav/";
        address.caFile = m_authority->file().toStdString();
    } else {
        address.url = "http://127.0.0.1:" + std::to_string(m_plainPort) + "/dav/";
    }
    address.user = user;
    address.password = password;
    return address;
}

std::filesystem::path DavServer::root() const
{
    return path("files/dav").toStdString();
}

QString DavServer::problem() const
{
    QByteArray text;
    for (const char *name : {"output", "log"}) {
        QFile file(path(name));
        if (file.open(QIODevice::ReadOnly))
            text += file.readAll().right(1000);
    }
    return QString::fromUtf8(text);
}

bool DavServer::isSmallDiskAllowed()
{
    QProcess trial;
    const QStringList words = ownMounts() << "mount"
                                          << "-t"
                                          << "tmpfs"
                                          << "lidlark"
                                          << "/mnt";
    trial.start(words.first(), words.mid(1));
    return trial.waitForFinished() && trial.exitStatus() == QProcess::NormalExit &&
           trial.exitCode() == 0;
}

} // namespace lidlark::test
