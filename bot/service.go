package main

import (
	"embed"
	"fmt"
	"text/template"

	"github.com/spf13/cobra"
)

//go:embed service
var serviceFiles embed.FS

func (p *program) serviceCommand() *cobra.Command {
	var where struct{ Program, Config, DB string }
	cmd := &cobra.Command{
		Use:   "service [systemd|container]",
		Short: "Print the files that run the bot as a service",
		Long: `Service prints a unit for systemd that keeps the bot running with as few rights
as it needs, or a file to build a container from. How to use each stands at its
head.`,
		Example: `  lazyhand service > /etc/systemd/system/lazyhand.service
  lazyhand service systemd --program /opt/lazyhand
  lazyhand service container > Containerfile`,
		ValidArgs: []string{"systemd", "container"},
		RunE: func(_ *cobra.Command, args []string) error {
			kind := "systemd"
			if len(args) > 0 {
				kind = args[0]
			}
			name, ok := map[string]string{"systemd": "lazyhand.service", "container": "Containerfile"}[kind]
			if !ok || len(args) > 1 {
				return fmt.Errorf("name one of systemd and container")
			}
			where.Config, where.DB = "/etc/lazyhand/lazyhand.yaml", "/var/lib/lazyhand/lazyhand.db"
			if p.configFile != "" {
				where.Config = p.configFile
			}
			if p.dbFile != "" {
				where.DB = p.dbFile
			}
			t, err := template.ParseFS(serviceFiles, "service/"+name)
			if err != nil {
				return err
			}
			return t.Execute(p.out, where)
		},
	}
	cmd.Flags().StringVar(&where.Program, "program", "/usr/local/bin/lazyhand", "where the program is installed")
	return cmd
}
