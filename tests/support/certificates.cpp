#include "tests/support/certificates.h"

#include <QFile>
#include <QProcess>

namespace lidlark::test {

namespace {

const QStringList newKey{"-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:P-256", "-nodes"};

QString openssl(const QStringList &arguments)
{
    QProcess process;
    process.start("openssl", arguments);
    if (!process.waitForFinished() || process.exitCode() != 0)
        qFatal("openssl %s: %s", qPrintable(arguments.join(' ')),
               process.readAllStandardError().constData());
    return QString::fromUtf8(process.readAllStandardOutput()).trimmed();
}

} // namespace

Authority::Authority(const QDir &folder) : m_folder(folder)
{
    openssl(QStringList{"req", "-x509", "-days", "2", "-subj", "/CN=Authority of a test", "-keyout",
                        m_folder.filePath("authority.key"), "-out", file()} +
            newKey);
}

Certificate Authority::sign(CertificateKind kind) const
{
    const QString name = QStringList{"right", "expired", "other"}.at(static_cast<int>(kind));
    Certificate made{m_folder.filePath(name + ".pem"), m_folder.filePath(name + ".key")};
    const QString request = m_folder.filePath(name + ".csr");
    const QString extensions = m_folder.filePath(name + ".ext");
    QFile file(extensions);
    if (!file.open(QIODevice::WriteOnly))
        qFatal("cannot write %s", qPrintable(extensions));
    file.write(kind == CertificateKind::OtherHost ? "subjectAltName=DNS:another.example\n"
                                                  : "subjectAltName=DNS:localhost,IP:127.0.0.1\n");
    file.write("basicConstraints=critical,CA:FALSE\n");
    file.close();
    openssl(QStringList{"req", "-subj", "/CN=server", "-keyout", made.key, "-out", request} +
            newKey);
    openssl({"x509", "-req", "-in", request, "-CA", this->file(), "-CAkey",
             m_folder.filePath("authority.key"), "-days",
             kind == CertificateKind::Expired ? "-1" : "2", "-extfile", extensions, "-out",
             made.certificate});
    return made;
}

QString passwordLine(const QString &user, const QString &password)
{
    return user + ":" + openssl({"passwd", "-apr1", password});
}

} // namespace lidlark::test
