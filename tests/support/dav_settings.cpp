#include "tests/support/dav_settings.h"

namespace lidlark::test {

namespace {

const QString apache = R"conf(
ServerName localhost
ServerRoot /usr/lib/apache2
DefaultRuntimeDir %FOLDER%
PidFile %FOLDER%/pid
ErrorLog %FOLDER%/log
LoadModule mpm_event_module modules/mod_mpm_event.so
LoadModule authz_core_module modules/mod_authz_core.so
LoadModule authz_user_module modules/mod_authz_user.so
LoadModule authn_core_module modules/mod_authn_core.so
LoadModule authn_file_module modules/mod_authn_file.so
LoadModule auth_basic_module modules/mod_auth_basic.so
LoadModule dav_module modules/mod_dav.so
LoadModule dav_fs_module modules/mod_dav_fs.so
LoadModule ssl_module modules/mod_ssl.so
StartServers 1
ThreadsPerChild 8
MaxRequestWorkers 8
ServerLimit 1
MinSpareThreads 1
MaxSpareThreads 8
Listen 127.0.0.1:%PLAIN%
Listen 127.0.0.1:%PORT%
DocumentRoot %FOLDER%/files
DAVLockDB %FOLDER%/locks
<Location /dav>
    Dav On
    AuthType Basic
    AuthName dav
    AuthUserFile %FOLDER%/passwords
    Require valid-user
</Location>
<VirtualHost 127.0.0.1:%PORT%>
    SSLEngine On
    SSLCertificateFile %CERTIFICATE%
    SSLCertificateKeyFile %KEY%
</VirtualHost>
)conf";

const QString lighttpd = R"conf(
server.modules = ( "mod_auth", "mod_authn_file", "mod_webdav" )
server.bind = "127.0.0.1"
server.port = %PLAIN%
server.document-root = "%FOLDER%/files"
server.upload-dirs = ( "%FOLDER%" )
server.pid-file = "%FOLDER%/pid"
server.errorlog = "%FOLDER%/log"
auth.backend = "htpasswd"
auth.backend.htpasswd.userfile = "%FOLDER%/passwords"
auth.require = ( "/dav" => ( "method" => "basic", "realm" => "dav", "require" => "valid-user" ) )
$HTTP["url"] =~ "^/dav($|/)" {
    webdav.activate = "enable"
    webdav.is-readonly = "disable"
    webdav.sqlite-db-name = "%FOLDER%/webdav.db"
}
)conf";

QString filledIn(QString text, const DavSettings &settings)
{
    return text.replace("%FOLDER%", settings.folder)
        .replace("%PORT%", QString::number(settings.port))
        .replace("%PLAIN%", QString::number(settings.plainPort))
        .replace("%CERTIFICATE%", settings.certificate.certificate)
        .replace("%KEY%", settings.certificate.key);
}

} // namespace

QString apacheSettings(const DavSettings &settings)
{
    return filledIn(apache, settings);
}

QString lighttpdSettings(const DavSettings &settings)
{
    return filledIn(lighttpd, settings);
}

} // namespace lidlark::test
